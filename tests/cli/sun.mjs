// Tests of sun and shade from the command line alone. run.mjs runs them.
import assert from 'node:assert/strict'
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** r.sun gives every cell its own height, a plan one height to all: these two are read between [m]. */
const HEIGHTS_M = [90, 200]
/** Mean level of the hill [m]: the one height that serves its cells best. */
const MEAN_M = 130

/** Share of each cell's own beam that may differ, both heights read between: steps of 0.1 h. */
const BEAM_SHARE = 0.0015
/** The same with one height for all cells: 70 m of air more or less are 0.7 % of the beam at Linke turbidity 3. */
const ONE_HEIGHT_SHARE = 0.01
/**
 * A day with cast shadows: the hill's whole sum, and the mean difference of a cell's global over the mean [ratio]. Along a
 * shadow's edge r.sun reads the nearest cell's height and we read between cells; its own rule is restated in tests/core.
 */
const HILL_SUM = 0.01
const CELL_MEAN = 0.01
/** Skylines towards the four winds, along rows and columns of cells [°]. */
const HORIZON_DEG = 0.02

/** Registers the tests with what run.mjs hands in: how to run a line, and where. */
export function sunTests({ test, lynchet, good, read, gridOf, folder, root, demos }) {
  const truth = (name) => gridOf(readFileSync(join(root, 'tests/truth/volcano', name), 'utf8')).cells
  copyFileSync(join(root, 'tests/truth/volcano/dem.asc'), join(folder, 'sun-hill.asc'))
  const hills = new Set()
  const hill = (elevationM) => {
    const file = `hill-${elevationM}.lynchet.json`
    if (hills.has(file)) return file
    hills.add(file)
    const place = ['--latitude', '52', '--longitude', '-2', '--elevation', String(elevationM)]
    good(['new', '--grid', 'sun-hill.asc', ...place, '--out', file])
    return file
  }
  const layer = (file, ...asked) => gridOf(good(['layer', file, ...asked])).cells
  const slope = truth('grass_slope_horn_deg.asc')
  const sound = truth('rsun_valid.asc')
  /** Cells inside the border, without those where r.sun loses a quadrant. */
  const compared = [...slope.keys()].filter((cell) => slope[cell] !== null && sound[cell] === 1)
  const rsunSky = ['--sky', 'clear', '--linke', '3', '--albedo', '0.2', '--sky-seen', 'tilt', '--step', '0.1']
  const worstShare = (ours, theirs) =>
    Math.max(...compared.map((cell) => Math.abs(ours(cell) / theirs[cell] - 1)))
  const mean = (list) => list.reduce((sum, one) => sum + one, 0) / list.length
  /** A layer of the hill with each cell's own height. */
  const atOwnHeight = (...asked) => {
    const level = truth('dem.asc')
    const [low, high] = HEIGHTS_M.map((height) => layer(hill(height), ...asked))
    const [lowM, highM] = HEIGHTS_M
    return (cell) => low[cell] + ((high[cell] - low[cell]) * (level[cell] - lowM)) / (highM - lowM)
  }

  test('GRASS r.sun restated: beam of 21 March without cast shadows, every one of 5,011 cells', () => {
    const theirs = truth('rsun_03-21_beam_noshadow.asc')
    const asked = ['beam', '--date', '03-21', ...rsunSky, '--shadows', 'none']
    assert.equal(compared.length, 5011)
    const most = worstShare(atOwnHeight(...asked), theirs)
    assert.ok(most < BEAM_SHARE, `the worst cell is ${most} away`)
    const one = layer(hill(MEAN_M), ...asked)
    const mostOfOne = worstShare((cell) => one[cell], theirs)
    assert.ok(mostOfOne < ONE_HEIGHT_SHARE, `with one height the worst cell is ${mostOfOne} away`)
  })

  for (const date of ['03-21', '06-21', '12-21'])
    test(`GRASS r.sun restated: beam, diffuse and global of ${date} with cast shadows`, () => {
      for (const name of ['beam', 'diffuse', 'global']) {
        const theirs = truth(`rsun_${date}_${name}.asc`)
        const ours = atOwnHeight(name, '--date', date, ...rsunSky)
        const ofMean = (differences) => mean(differences) / mean(compared.map((cell) => theirs[cell]))
        const sum = Math.abs(ofMean(compared.map((cell) => ours(cell) - theirs[cell])))
        assert.ok(sum < HILL_SUM, `${name} of the hill: ${sum}`)
        const cells = ofMean(compared.map((cell) => Math.abs(ours(cell) - theirs[cell])))
        if (name === 'global') assert.ok(cells < CELL_MEAN, `${name} of the cells: ${cells}`)
      }
    })

  test('GRASS r.horizon towards the four winds, every interior cell of the hill', () => {
    const file = hill(MEAN_M)
    for (const [name, azimuth] of [
      ['000', '0'],
      ['090', '90'],
      ['180', '180'],
      ['270', '270'],
    ]) {
      const theirs = truth(`grass_horizon_${name}_deg.asc`)
      const ours = layer(file, 'horizon', '--azimuth', azimuth)
      const inside = [...slope.keys()].filter((cell) => slope[cell] !== null)
      assert.equal(inside.length, 85 * 59)
      for (const cell of inside)
        assert.ok(
          Math.abs(Math.max(0, ours[cell]) - Math.max(0, theirs[cell])) < HORIZON_DEG,
          `${name}, cell ${cell}: ${ours[cell]} and ${theirs[cell]}`,
        )
    }
  })

  test('GRASS r.sun at noon on 21 December: light is there on the cells that have beam, on every one of 5,011', () => {
    const beam = truth('rsun_12-21_1200_beam_Wm2.asc')
    const light = layer(hill(MEAN_M), 'light', '--date', '12-21', '--time', '12:00')
    for (const cell of compared) assert.equal(light[cell] > 0, beam[cell] > 0, `cell ${cell}`)
  })

  const flat = (latitude, longitude = '0', ...more) => {
    const rows = [0, 20, 40].flatMap((east) => [0, 20, 40].map((north) => `${east},${north},0`))
    writeFileSync(join(folder, 'flat.csv'), `east,north,level\n${rows.join('\n')}\n`)
    const place = ['--latitude', String(latitude), '--longitude', longitude, '--elevation', '0']
    return JSON.parse(good(['new', '--levels', 'flat.csv', ...place, ...more]))
  }
  const written = (name, plan) => {
    writeFileSync(join(folder, name), JSON.stringify(plan))
    return name
  }
  const placeOf = (file, at, ...more) => JSON.parse(good(['sun', file, '--at', at, '--json', ...more])).place

  test('FAO-56 ch. 3 example 9: 11.7 h of day at 20° S on 3 September, on a flat open plot', () => {
    const file = written('flat-20.json', flat(-20))
    // The example's sunset hour angle is 1.527 rad; its declination and ours differ by some 0.3°.
    const exampleH = (24 / Math.PI) * 1.527
    for (const cell of layer(file, 'sun-hours', '--date', '09-03'))
      assert.ok(Math.abs(cell - exampleH) < 0.05)
    const { days } = placeOf(file, '20,20', '--date', '2027-09-03')
    assert.ok(Math.abs(days.at(-1).sunHours - exampleH) < 0.05)
  })

  test('exact geometry: a wall 3 m high to the south, 6 m away, covers the sky up to its angle and the sun behind it', () => {
    const plan = flat(51.5)
    const [eastM, northM] = [20, 20]
    const wall = [
      { eastM: -2000, northM: northM - 6 },
      { eastM: 2000, northM: northM - 6 },
    ]
    plan.survey.obstacles = [{ id: 'wall', kind: 'wall', name: 'Wall', ring: wall, heightM: 3 }]
    const file = written('walled.json', plan)
    const { skyline, days } = placeOf(file, `${eastM},${northM}`)
    const rad = Math.PI / 180
    for (const { azimuthDeg, things } of skyline) {
      // Seen aslant the wall is further away by the cosine.
      const rise = (-3 / 6) * Math.cos(azimuthDeg * rad)
      const expected = Math.atan(rise) / rad
      if (rise < 1e-9) assert.deepEqual(things, [], String(azimuthDeg))
      else assert.ok(Math.abs(things[0].toDeg - expected) < 0.02, `${azimuthDeg}: ${things[0]?.toDeg}`)
    }
    // At midwinter the noon sun stands 15° up, below 26.6°: no sun; at midsummer 62° up, above it.
    assert.equal(days.find(({ name }) => name === 'midwinter').sunHours, 0)
    assert.ok(
      days.find(({ name }) => name === 'midsummer').spells.some(({ fromH, toH }) => fromH < 12 && toH > 12),
    )
    const towards = layer(file, 'horizon', '--azimuth', '180', '--with', 'things', '--date', '01-15')
    assert.ok(towards.some((angle) => Math.abs(angle - Math.atan(3 / 6) / rad) < 2))
    const away = layer(file, 'horizon', '--azimuth', '0', '--with', 'things')
    assert.ok(away.filter((angle) => angle !== null).some((angle) => angle <= 0))
  })

  test('equivalent-slope geometry: a bank of 70° facing the pole has sun before 9:01 and after 14:59 at midsummer', () => {
    const bank = ['new', '--bank', '12,70deg,0,30', '--latitude', '51.5', '--longitude', '-2']
    const file = written('pole.json', JSON.parse(good(bank)))
    const { days } = placeOf(file, '0,1')
    const { spells } = days.find(({ name }) => name === 'midsummer')
    assert.equal(spells.length, 2)
    // The bank lies as level ground 70° nearer to the pole: its sun comes and goes at cos H = -tan(51.5° + 70°) tan(23.45°).
    const rad = Math.PI / 180
    const turnH = Math.acos(-Math.tan(121.5 * rad) * Math.tan(23.45 * rad)) / rad / 15
    assert.ok(Math.abs(spells[0].toH - (12 - turnH)) < 0.02)
    assert.ok(Math.abs(spells[1].fromH - (12 + turnH)) < 0.02)
    assert.deepEqual(days.find(({ name }) => name === 'midwinter').spells, [])
  })

  test('NREL SPA, Golden, Colorado: the sun of 2 August 2015 is highest at 13:06:58 by the clock', () => {
    const file = written('golden.json', flat(39.742476, '-105.1786', '--time-zone', 'America/Denver'))
    const { days } = placeOf(file, '20,20', '--date', '2015-08-02')
    const [{ fromClock, toClock }] = days.at(-1).spells
    const minutes = (text) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3))
    // Both ends are told in whole minutes.
    assert.ok(Math.abs((minutes(fromClock) + minutes(toClock)) / 2 - (13 * 60 + 6 + 58 / 60)) <= 1)
    const bySun = layer(file, 'light', '--date', '2015-08-02', '--clock', '13:07')
    assert.ok(bySun.every((share) => share === 1))
  })

  test('polar day and night at 70° N: 24 h and none; the equator has 12 h all year; the south turns round', () => {
    const north = placeOf(written('polar.json', flat(70)), '20,20')
    assert.equal(north.days.find(({ name }) => name === 'midsummer').sunHours, 24)
    assert.equal(north.days.find(({ name }) => name === 'midwinter').sunHours, 0)
    assert.equal(north.dark.kind, 'spell')
    for (const { sunHours } of placeOf(written('equator.json', flat(0)), '20,20').days)
      assert.ok(Math.abs(sunHours - 12) < 0.01)
    const south = placeOf(written('south.json', flat(-51.5)), '20,20').days
    assert.equal(south.find(({ name }) => name === 'midsummer').date, '12-21')
    assert.ok(south[0].sunHours > 16)
  })

  test('energy per m² of plan is that of the slope over its cosine: 26.565° make 1.118', () => {
    const bank = good(['new', '--bank', '12,1:2,200,30', '--latitude', '51.5', '--longitude', '-2'])
    const file = written('bank-sun.json', JSON.parse(bank))
    const perSlope = layer(file, 'global', '--date', '06-21')
    const perPlan = layer(file, 'global', '--date', '06-21', '--per', 'plan')
    perSlope.forEach((wh, cell) => {
      if (wh !== null) assert.ok(Math.abs(perPlan[cell] / wh - 1 / Math.cos(Math.atan(1 / 2))) < 1e-4)
    })
    assert.ok(
      lynchet(['layer', file, 'global', '--per', 'plan']).err.includes('usual sky: Wh per m² of plan'),
    )
    assert.ok(
      lynchet(['layer', file, 'beam', '--sky', 'clear']).err.includes(
        'clear sky of usual haze: Wh per m² of slope',
      ),
    )
  })

  for (const demo of demos)
    test(`sun of ${demo}: the documented format, an account that adds up, trials beside it, twice the same bytes`, () => {
      const json = good(['sun', demo, '--json'])
      const found = JSON.parse(json)
      const schema = JSON.parse(readFileSync(join(root, 'docs/schema/sun.schema.json'), 'utf8'))
      assert.deepEqual(Object.keys(found), schema.required)
      assert.equal(good(['sun', demo, '--json']), json)
      const plan = JSON.parse(read(demo))
      assert.deepEqual(
        found.trials.map(({ name }) => name),
        (plan.trials ?? []).map(({ name }) => name),
      )
      const hundredths = (hours) => Math.round(hours * 100)
      const suns = [found, ...found.trials].flatMap(({ zones }) => zones.map(({ sun }) => sun))
      for (const { account, sunHours } of suns)
        sunHours.forEach((hours, month) => {
          const taken = account.takers.reduce((sum, taker) => sum + hundredths(taker.hours[month]), 0)
          assert.equal(hundredths(account.openHours[month]) - taken, hundredths(hours))
        })
      const text = good(['sun', demo])
      for (const part of [
        'SUN OF THE ZONES',
        'open level ground',
        'direct sun',
        ...found.trials.map(({ name }) => name.toUpperCase()),
      ])
        assert.ok(text.includes(part), part)
      assert.ok(!/NaN|undefined|null|\[object/.test(text))
      const { eastM, northM } = found.zones[0].sun.middle
      const place = good(['sun', demo, '--at', `${eastM},${northM}`, '--date', '04-15'])
      for (const part of ['midsummer', '15 April', 'THE SKYLINE', 'north'])
        assert.ok(place.includes(part), part)
      assert.ok(!/NaN|undefined|null|\[object/.test(place))
      for (const { name } of found.trials.slice(0, 1)) {
        const gains = layer(demo, 'trial-gain', '--trial', name).filter((gain) => gain !== null)
        assert.ok(gains.length > 0 && gains.every(Number.isFinite))
      }
    })

  test('sun and layers: what cannot be is refused with its place and mend', () => {
    const [demo] = demos
    const plain = written('plain.json', flat(51.5))
    const misread = [
      [['layer', demo, 'global', '--linke', '3'], '--sky clear'],
      [['layer', demo, 'global', '--sky', 'cloudy'], 'usual or clear'],
      [['layer', demo, 'global', '--date', '02-30'], 'MM-DD'],
      [['layer', demo, 'global', '--date', '2027-02-29'], 'MM-DD'],
      [['layer', demo, 'global', '--step', '3'], '0.01 to 2'],
      [['layer', demo, 'global', '--shadows', 'some'], 'all or none'],
      [['layer', demo, 'sun-hours', '--per', 'plan'], 'does not take --per'],
      [['layer', demo, 'slope', '--date', '06-21'], 'does not take --date'],
      [['layer', demo, 'horizon', '--azimuth', '90', '--with', 'nothing'], 'things'],
      [['layer', demo, 'light'], '--time'],
      [['layer', demo, 'light', '--time', '25:00'], 'HH:MM'],
      [['layer', demo, 'light', '--time', '12:00', '--clock', '12:00'], 'not both'],
      [['layer', demo, 'trial-gain'], '--trial'],
      [['layer', demo, 'trial-gain', '--trial', 'nonsuch'], 'no trial'],
      [['sun'], 'a plan'],
      [['sun', demo, '--at', 'here'], 'EAST,NORTH'],
      [['sun', demo, '--date', '06-21'], '--at'],
      [
        [
          'new',
          '--bank',
          '7,2,200,10',
          '--latitude',
          '50',
          '--longitude',
          '0',
          '--time-zone',
          'Mars/Olympus',
        ],
        'Europe/London',
      ],
    ]
    for (const [line, part] of misread) {
      const { code, err, out } = lynchet(line)
      assert.equal(code, 2, `${line.join(' ')} ended with ${code}`)
      assert.equal(out, '')
      assert.ok(err.includes(part), `${line.join(' ')}: ${err}`)
    }
    const wrong = [
      [['sun', plain, '--at', '500,500'], 'off the plot'],
      [['layer', plain, 'light', '--clock', '12:00'], 'time zone'],
    ]
    for (const [line, part] of wrong) {
      const { code, err, out } = lynchet(line)
      assert.equal(code, 1, `${line.join(' ')} ended with ${code}`)
      assert.equal(out, '')
      assert.ok(err.includes(part), err)
    }
  })
}
