import type { Texture, TextureClass } from './soil.schema'
import type { SoilTables } from './soil-tables.schema'
import { classByFeel } from './feel-test'
import { readJar } from './jar-test'
import { rowOf } from './row-of'
import { textureClassOf } from './texture-class'

/** A texture as shares and as a class. */
export interface GrainShares {
  readonly textureClass: TextureClass
  readonly sandPercent: number
  readonly siltPercent: number
  readonly clayPercent: number
}

/**
 * Sand, silt and clay of a texture, however it was learnt.
 *
 * A class that was named or felt takes the shares that stand for the class.
 *
 * @param texture - what was done to learn it
 * @param tables - soil tables, for what stands for a class
 * @returns the class and the shares, adding up to 100 [%]
 * @throws RangeError when a jar is empty or the shares do not add up
 */
export function grainsOf(texture: Texture, tables: SoilTables): GrainShares {
  switch (texture.by) {
    case 'class':
      return centreOf(texture.class, tables)
    case 'feel':
      return centreOf(classByFeel(texture), tables)
    case 'jar':
      return readJar(texture)
    case 'percent':
      return measured(texture.sandPercent, texture.siltPercent, texture.clayPercent)
  }
}

function centreOf(textureClass: TextureClass, tables: SoilTables): GrainShares {
  const { sandPercent, clayPercent } = rowOf(
    tables.classes,
    (row) => row.class === textureClass,
    textureClass,
  )
  return { textureClass, sandPercent, siltPercent: 100 - sandPercent - clayPercent, clayPercent }
}

function measured(sand: number, silt: number, clay: number): GrainShares {
  const textureClass = textureClassOf(sand, silt, clay)
  const scale = 100 / (sand + silt + clay)
  return {
    textureClass,
    sandPercent: sand * scale,
    siltPercent: silt * scale,
    clayPercent: clay * scale,
  }
}
