export const HELP = `loomwright — the wiring of an old road vehicle: read, resolved and truly solved

  loomwright check FILE            is the record sound, and does it give one wiring for every edition, or this vehicle?
  loomwright solve FILE            what is live, how bright each lamp is, in a setting of the controls
  loomwright meter FILE --volts A B [--meter OHMS] | --amps WIRE | --ohms A B | --series-lamp W
                                   what a meter reads; ohms with the battery off and cold filaments;
                                   a lamp of W watts in series with the battery's live lead
  loomwright serve [FILE …]        the live page, on this machine only   [--port N]

Which vehicle
  --year N   --serial SERIES=NUMBER   --market ID   --option ID   --option ID=no

Which setting (whatever is not named is at rest)
  --set control=position, --set control.axis=position      as often as needed
  --engine stopped|stopped-open|cranking|idle|cruise|RPM   stopped-open: the points stand apart
  --battery full|low                                       low: a quarter charged, resistance three times
  --phase part=name                                        where a wiper or flasher begins
  --then                                                   another setting after this one: what is made stays made if it can

Faults, as often as needed
  --fault open:WIRE           a wire, one end of it (w12.1), a fixing, a part's element or all at a point
  --fault ohms:ID=N           N ohms added in series
  --fault join:A=B            two points touch
  --fault swap:A=B            what sits on A goes to B, and the other way round
  --fault set:PART.param=N    a parameter has another value
  --fault hold:PART=STATE     a state or a phase cannot move

  --json                      the same as data; docs/json.md says what each field means

Exit codes: 0 done; 1 check found a conflict or a shorted battery, or cannot tell; 2 the arguments or the record
cannot be read, or the vehicle cannot be resolved.

Examples
  loomwright check examples/vehicles/tessarby-errand.json --year 1955
  loomwright solve examples/vehicles/tessarby-errand.json --year 1960 --set switch-box.key=on --set switch-box.lights=head --engine idle
  loomwright solve examples/vehicles/tessarby-errand.json --year 1960 --set switch-box.key=start --engine cranking --then --set switch-box.key=on --engine idle
  loomwright solve examples/vehicles/tessarby-errand.json --year 1960 --set switch-box.key=on --set brake-switch=pressed --fault open:left-wing-bolts
  loomwright meter examples/vehicles/tessarby-errand.json --year 1960 --set switch-box.lights=head --volts battery:+ head-left:56b

A computed result is a help to judgement and says what it assumed. Battery off before any work on the wiring;
local rules and licensed practice decide.`
