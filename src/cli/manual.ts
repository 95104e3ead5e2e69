/** The manual, printed by --help. */
export const manual = `lynchet: what to plant on a slope, where, and how to look after it

USE
  lynchet assess PLAN [--json] [--without-layers] [--out F]
      Work a plan out: zones, scores, what each zone may be, plants, care.
      Text to read, or with --json the complete findings (docs/schema/findings.md).

  lynchet spot FILE.csv [--json] [--plants N] [--plant NAME] [--region R] [--law NAME] [--out F]
      Score places without a survey, one row each. Columns, in any order:
        id
        latitudeDeg    -90 to 90, north positive
        slopeDeg       0 to 80
        aspectDeg      direction faced, 0 north, 90 east; empty only where slopeDeg is 0
        position       0 foot to 1 crest, or crest, upper, mid, lower, foot (0.9, 0.7, 0.5, 0.3, 0.1)
        texture        USDA class, such as loam or sandy clay loam
      where known:
        formDown, formAcross   concave, straight, convex; straight when left out
        soilDepthM     0.6 when left out
        stonesPercent  5 when left out
        organicPercent 3 when left out
        ph             not judged when left out
        elevationM     the listed place's, or 100, when left out
      and the climate, one of:
        place          an id of data/climate/places.json, such as london
        tmin1..12, tmax1..12, rain1..12   means in °C and mm, January first; coast yes or no
      with either, what tells the radiation better than temperature does, all twelve months:
        radiation1..12 MJ/m² a day on level ground
        sunshine1..12  hours of bright sunshine a day
      Prints id, wetnessScore, wetnessClass, sunScore, sunClass, heatLoad, erosionScore, frostScore;
      with --json the level book behind every score (docs/schema/spots.md). heatLoad is in MJ/cm² a
      year (McCune and Keon 2002) and empty beyond 60° of latitude. The sky is taken to be open, and
      the water that of a typical slope of 20 m under grass.
      --plants N adds the N best plants; --plant NAME the verdict on one plant, with reasons.
      --region british-isles|europe|north-america|australia-nz says where plants are bought;
      --law NAME whose plant laws count, such as "England and Wales".
      One bad cell, and nothing is printed but every problem by row and column.

  lynchet layer PLAN NAME [--out F.asc|F.tif]
      One grid as an ESRI ASCII grid or a GeoTIFF. What a layer takes:
        sun-hours, beam, diffuse, reflected, global   one day, past ground, things and far hills
          --date MM-DD or YYYY-MM-DD   midsummer when left out; 29 February counts as the 28th
          --sky usual          the usual sky of the month, from the plan's climate; this when left out
          --sky clear          a clear sky of the European Solar Radiation Atlas, with --linke 1..8, its
                               haze; the usual haze of the country air of the month when left out
          --albedo 0..1        what the ground throws back; 0.2 when left out
          --step H             longest time step, 0.01 to 2 h; 0.5 when left out
          --shadows all|none   none: nothing throws a shadow, not even the ground
          --sky-seen skyline|tilt   tilt: the light of the sky is cut by the cell's own tilt alone
          --per slope|plan     energy per m² of slope (this when left out) or of plan; not of sun-hours
        morning-hours, dappled-hours, sun-ratio       the month of --date; midsummer's when left out
        light                  one moment: --time HH:MM by the sun, 12:00 when it is highest, or
                               --clock HH:MM where the plan has a time zone; and --date
        horizon                --azimuth DEG, 0 north, 90 east; --with things adds far hills and things
                               that let no light through in the month of --date, crowns by their top
        trial-gain             --trial NAME, a trial of the plan
        seen                   --from NAME, a viewpoint of the plan
        tpi                    --radius CELLS, 1 or more
      A layer of a day or a moment says on standard error what it is of and in which unit.
      Layers of the ground alone, from level to relative-position, of one day, light and horizon are
      quick on large plots too.
  lynchet layer --list
      Every layer with its unit and method.

  lynchet sun PLAN [--json] [--out F]
      The sun of every zone: light class, hours of direct sun month by month with morning, afternoon and
      leaves, share of open level ground's season, sky seen, heat load, who takes how much (the account
      adds up), when the sun leaves in winter; and every trial of the plan beside the plan as it is.
  lynchet sun PLAN --at EAST,NORTH [--date MM-DD] [--json] [--out F]
      The sun from one place, in metres east and north of the plot's origin: hours and times at
      midsummer, the equinoxes, midwinter and --date, by the sun and by the clock of the plan's time zone;
      its winter; and its skyline. With --json both at once (docs/schema/sun.md).

  lynchet trace PLAN --at EAST,NORTH [--json]
      The ground at one place, in metres east and north of the plot's origin: level and gradient with
      their errors, the way a drop takes from there and where it ends, the steepest line through it, and
      the ground that drains through it.

  lynchet contours PLAN [--interval M] [--out F.geojson]
      Contours as GeoJSON, in the plot's own metres and not in degrees, as the file says. The interval is
      1, 2, 2.5 or 5 by a power of ten, chosen by the fall, when left out.

  lynchet report PLAN --out F.html
      The report to print or hand over, in one file.

  lynchet calendar PLAN --out F.ics [--year YYYY]
      The year's jobs for a calendar program (iCalendar). Lasting jobs come back every year. Written
      again, its entries replace the older ones. YYYY is 2027 when left out.

  lynchet schedule PLAN plants|zones [--out F.csv]
      The plants to order with law and poison, or the zones with their measures, as CSV.

  lynchet check FILE
      Say whether a plan can be opened, and every problem if not.

  lynchet new --survey FILE [--part NAME] [--unit U] [--level-unit U] [--epsg N] [--columns ORDER]
              [--zero keep|leave-out] [--window WEST,SOUTH,EAST,NORTH] [--lengths] [--anyway]
              [--latitude DEG --longitude DEG] [--elevation M] [--time-zone ZONE] [--name NAME]
              [--place ID] --out F
      Start a plan from a survey file: a table (CSV, tabs, blanks, XYZ), GeoJSON, ESRI ASCII grid,
      GeoTIFF, LandXML or DXF, told by what it holds. Latitude and longitude come from the file's
      coordinate system where it names one that is known, or from --epsg; otherwise they must be given.
        --part      one part, or several groups of points with commas between; read FILE lists them
        --unit      m, cm, mm, ft, us-ft or in; needed where the file does not say
        --columns   order of a table's columns without headings: ENZ, NEZ, PENZ, PNEZ, PENZD, PNEZD, ENZD,
                    NEZD (P point, E east, N north, Z level, D description)
        --zero      whether levels of exactly 0 are ground
        --window    part of a grid to keep, in the file's own coordinates
        --lengths   east and north are lengths, though they look like degrees
      What looks wrong is asked, not guessed: the plan is not written until the option named with each
      question answers it, or --anyway takes the file as it is.

  lynchet read FILE [--json] [--columns ORDER] [--out F]
      What a survey file is understood to hold: parts, extents, unit, coordinate system, what was left
      out, and what must be asked.

  lynchet new --bank LENGTH,RISE,DIRECTION,WIDTH | --profile F.csv --faces DEG --width M
              | --levels F.csv | --grid F.asc | --book F.csv (with the options of book)
              --latitude DEG --longitude DEG [--elevation M] [--time-zone ZONE] [--name NAME]
              [--place ID] --out F
      Start a plan. RISE is metres, or 30deg, 1:2, 50%. In a profile, distances are level distances
      unless --taped says that the tape lay on the ground. Units are metres; --feet for feet. ZONE is a
      name such as Europe/London: the plan then tells times by the clock too.
      --book reduces a field book and keeps it in the plan: lines with distances (or legs, steps, a
      string) make a profile, which needs --faces and --width; lines with east and north make levels.
      --compass says that --faces was read off a compass on the day --on; it is turned to true north.

  lynchet book FILE.csv [--kind level|chain|steps|string] [--start LEVEL] [--unit m|cm|ft|ft-in|us-ft]
               [--json] [--out F]
      Reduce a field book, prove its sums, and say how good its levels are. Columns, in any order:
        level    mark, BS, IS, FS, distance, east, north, level (worked out by hand), remark
        chain    mark, length (along the ground), angle (degrees, falling negative; or %, or 1:3), remark
        steps    mark, drop, remark; --span M is the level distance of a step, --tool a-frame|line-level
        string   mark, run, drop, remark
      An inverted staff is negative. A unit in a heading, such as BS (ft), counts for its column;
      distances and levels of a book in cm are metres. Feet and inches: 5' 3 1/2", 5 ft 3 in, 5-3 1/2.
      For a level book:
      --reduction rise-and-fall|height-of-collimation
      --end LEVEL      known level of the last mark, which closes the book
      --allowable ID   rule for the misclosure: an id of data/survey/allowables.json, such as set-ups-5
      --km K           length of the line, for rules that go by it
      --adjust         share the misclosure out equally over the set-ups

  lynchet sheet METHOD --out F.html [--lines N]
  lynchet sheet --list
      A field sheet to print: how a method is done, how good it is, its cautions, and lines to fill in.

  lynchet bearing DEG --latitude DEG --longitude DEG --on YYYY-MM-DD [--elevation M]
      A compass bearing turned to true north by the World Magnetic Model 2025.

  lynchet schema --out FOLDER
      Write the format pages and JSON Schemas of plans, findings, sun and places.

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
