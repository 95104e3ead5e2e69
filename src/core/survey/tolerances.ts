/** Places closer than this are one place measured twice [m]; own judgement: no survey of ground tells them apart. */
export const SAME_PLACE_M = 0.001

/** Levels closer than this agree [m]; own judgement, about the error of a level read with care. */
export const SAME_LEVEL_M = 0.005

/** Lines whose levels differ by more than this where they meet are told of [m]; own judgement. */
export const DISAGREE_M = 0.05

/** The ground on each side of a wall ends this far from its line [m]; own judgement: less than anyone draws a wall to. */
export const WALL_HALF_M = 0.005
