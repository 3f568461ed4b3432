/** TABLE: the parts list of an invented television set: six sections, each of which numbers anew. */

/** The factory list of the sample's console television, as it was typed. */
export const HARBORLIGHT_LIST = `HARBORLIGHT 21-C CONSOLE                    CHASSIS 9K, RUN 2

                 REPLACEMENT PARTS LIST

GENERAL NOTES
 1. All resistors are 1/2 watt composition, plus or minus 20%, unless noted.
 2. K = 1000 ohms, MEG = 1,000,000 ohms.
 3. Condensers not otherwise described are paper tubular, 400 volts.
 4. mf = microfarads, mmf = micromicrofarads. Micas are 500 volts.
 5. Each section numbers its parts anew.

POWER SUPPLY
R1     5.6 ohms, wirewound, 5 watts, surge limiter
R2     150 ohms, wirewound, 10 watts, heater string dropping
R3     2200 ohms, 2 watts, B+ dropping
R4     100K, 1 watt, bleeder
R5     470K, line isolation
R6     33 ohms, 1 watt, fusible
C1     .05 mf, 600 v., across line
C2     .01 mf, 600 v., line to chassis
C3     Electrolytic, can
         C3A  100 mf, 300 volts, first filter
         C3B  60 mf, 300 volts, second filter
         C3C  40 mf, 150 volts
C4     80 mf, 150 volts, electrolytic, later filter
C5     1000 mmf, ceramic disc, heater by-pass
C6     1000 mmf, ceramic disc, heater by-pass
M1     Selenium rectifier, 350 ma
L1     Filter choke, 1.5 henry
F1     Fuse, 1.6 ampere, slow

SOUND
R1     47K, sound IF grid
R2     1000 ohms, screen dropping, 1 watt
R3     100K, detector load, 5%
R4     470K, plate load, first audio
R5     470K, grid leak, output
R6     330 ohms, 1 watt, cathode, output
R7     10 MEG, grid leak, first audio
R8     Volume control, 1 MEG, audio taper, with switch
R9     Tone control, 500K, linear
R10    22K, decoupling
R11    2.2 MEG, de-emphasis return
C1     5000 mmf, ceramic disc, screen by-pass
C2     .02 mf, coupling to output grid
C3     25 mf, 25 volts, electrolytic, cathode by-pass
C4     .005 mf, 600 v., output plate to B+
C5     .01 mf, coupling
C6     1000 mmf, mica, 5%, de-emphasis
C7     10 mmf, ceramic NP0, 5%
C8     .1 mf, plate supply by-pass
C9     4 mf, 50 volts, electrolytic, ratio detector
T1     Ratio detector transformer
T2     Output transformer

PICTURE IF
R1     3300 ohms, 5%, tuned load
R2     47 ohms, cathode, first IF
R3     4700 ohms, 5%
R4     68 ohms, cathode, second IF
R5     5600 ohms, 5%
R6     180 ohms, cathode, third IF
R7     1500 ohms, plate decoupling
R8     1500 ohms, plate decoupling
R9     1000 ohms, screen dropping
R10    470K, AGC filter
R11    3900 ohms, 5%, detector load
C1     1500 mmf, ceramic disc
C2     1500 mmf, ceramic disc
C3     1500 mmf, ceramic disc, screen by-pass
C4     1500 mmf, ceramic disc, screen by-pass
C5     270 mmf, mica, coupling
C6     270 mmf, mica, coupling
C7     10 mmf, ceramic N750, 10%
C8     .1 mf, 200 v., AGC by-pass
C9     .25 mf, 200 v., AGC by-pass
C10    3 - 12 mmf, ceramic trimmer

VIDEO
R1     2200 ohms, 2 watts, plate load, video output
R2     3300 ohms, 1 watt, 10%
R3     1 MEG, grid leak
R4     100 ohms, cathode, video output
R5     18K, 1 watt, screen dropping
R6     220K, DC restorer
R7     Contrast control, 5000 ohms, linear
R8     Brightness control, 100K, linear
R9     150K
R10    56K, 1 watt
R11    470K, grid return, picture tube
C1     .1 mf, 600 v., coupling, video to picture tube
C2     10 mf, 350 volts, electrolytic, screen by-pass
C3     .05 mf, 600 v.
C4     100 mmf, mica
C5     .22 mf, 400 v., cathode by-pass
L2     Peaking coil, 180 microhenries, wound on 22K resistor
L3     Peaking coil, 250 microhenries

SYNC AND SWEEP
R1     10K, sync separator
R2     680K, grid leak
R3     8.2 MEG
R4     1.5 MEG, vertical size
R5     Vertical hold control, 1 MEG, linear
R6     Height control, 2.5 MEG, linear
R7     Vertical linearity control, 5000 ohms, linear
R8     1000 ohms, 1 watt, cathode, vertical output
R9     220K, 5%, horizontal oscillator timing
R10    150K, 5%, horizontal oscillator timing
R11    470K, 5%
R12    68K, horizontal AFC
R13    68K, horizontal AFC
R14    Horizontal hold control, 50K, linear
R15    4700 ohms, 2 watts, screen dropping, horizontal output
R16    47 ohms, grid stop, horizontal output
R17    1 MEG, grid leak, horizontal output
C1     .01 mf, sync coupling
C2     .0047 mf, 600 v., integrator
C3     .0022 mf, 600 v., integrator
C4     .1 mf, 600 v., vertical discharge
C5     .05 mf, 600 v., coupling, vertical output
C6     100 mf, 50 volts, electrolytic, cathode by-pass
C7     .25 mf, 600 v.
C8     390 mmf, silver mica, 5%, horizontal oscillator timing
C9     680 mmf, mica, 5%, horizontal oscillator timing
C10    .001 mf, 600 v., coupling, horizontal output
C11    .0068 mf, 5%, discharge
C12    82 mmf, mica
V1     Tube, sync separator
V2     Tube, horizontal output

HIGH VOLTAGE
R1     3.3 ohms, wirewound, 2 watts, filament dropping
R2     1 MEG, 2 watts, high voltage filter
R3     Focus control, 2 MEG, 1 watt
R4     4.7 MEG, 1 watt, focus divider
R5     15K, 2 watts, damper
C1     500 mmf, 20,000 volts, ceramic, high voltage filter
C2     .1 mf, 1000 v., boost
C3     .05 mf, 1000 v., boost
C4     82 mmf, 3000 volts, ceramic, yoke
C5     .035 mf, 600 v., width
F2     Fuse, 1/4 ampere, horizontal output
T3     Horizontal output transformer
`;
