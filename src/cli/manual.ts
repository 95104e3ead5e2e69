/** The manual, printed by --help. */
export const manual = `lynchet: what to plant on a slope, where, and how to look after it

USE
  lynchet assess PLAN [--json] [--without-layers] [--out F]
      Work a plan out: zones, scores, what each zone may be, plants, care.
      Text to read, or with --json the complete findings (docs/schema/findings.md).

  lynchet spot FILE.csv [--json] [--plants N] [--plant NAME] [--out F]
      Score places without a survey, one row each. Columns:
        id, latitudeDeg, slopeDeg, aspectDeg (direction faced, 0 north, 90 east; blank where level),
        position (0 foot to 1 crest, or crest, upper, mid, lower, foot), texture (USDA class)
      and, where known:
        formDown, formAcross (concave, straight, convex), soilDepthM, stonesPercent, ph, elevationM
      and the climate, as place (an id of data/climate/places.json) or tmin1..12, tmax1..12, rain1..12.
      Prints id, wetnessScore, wetnessClass, sunScore, sunClass, heatLoad, erosionScore, frostScore.
      --plants N adds the N best plants; --plant NAME the verdict on one plant, with reasons.
      --region british-isles|europe|north-america|australia-nz says where plants are to be had.

  lynchet layer PLAN NAME [--out F.asc]
      One grid as an ESRI ASCII grid. Sun layers take --date MM-DD and --sky clear --linke N --albedo N;
      horizon takes --azimuth DEG.
  lynchet layer --list
      Every layer with its unit and method.

  lynchet report PLAN --out F.html
      The report to print or hand over, in one file.

  lynchet calendar PLAN --out F.ics [--year YYYY]
      The year's jobs for a calendar program (iCalendar).

  lynchet check FILE
      Say whether a plan can be opened, and every problem if not.

  lynchet new --bank LENGTH,RISE,DIRECTION,WIDTH | --profile F.csv --faces DEG --width M
              | --levels F.csv | --grid F.asc
              --latitude DEG --longitude DEG [--elevation M] [--name NAME] [--place ID] --out F
      Start a plan. RISE is metres, or 30deg, 1:2, 50%. In a profile, distances are level distances
      unless --taped says that the tape lay on the ground. Units are metres; --feet for feet.

  lynchet schema --out FOLDER
      Write the format pages and JSON Schemas of plans and findings.

  --help, --version

FILES
  PLAN is a *.lynchet.json file; "-" reads standard input.

EXIT CODES
  0  done
  1  the input has problems; each is printed with its place and how to mend it
  2  the command was not understood
  3  the program failed; please report it

The same input gives the same bytes. Nothing is sent over a network.
The findings are advice for gardeners, not an engineering assessment: steep, wet or slipping ground,
walls and anything with a building above need a licensed engineer.
`
