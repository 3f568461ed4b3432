/** TABLE: the parts lists of the sample's two smaller sets, invented as well. */

/** A table radio whose chassis is tied to the line. M stands for thousand in it, as it did before the war. */
export const MILLBROOK_LIST = `MILLBROOK TABLE RECEIVER MODEL 5-D        FIVE TUBES, A.C.-D.C.

PARTS LIST
Note: M after a figure is thousands of ohms; MEG is millions. Resistors 1/2 watt.
Note: condensers are paper unless otherwise described.

CONDENSERS
C1    .1 mf 400 v      line by-pass
C2    .05 mf 200 v     AVC
C3    .05 mf 400 v     screen by-pass
C4    .002 mf 600 v    coupling
C5    .01 mf 400 v     coupling to output grid
C6    .02 mf 400 v     output plate by-pass
C7    .2 mf 400 v      B minus to chassis
C8    250 mmf mica     detector filter
C9    100 mmf mica
C10   Electrolytic, dry
        C10A  50 mf 150 v  first filter
        C10B  30 mf 150 v  second filter
C11   25 mf 25 v electrolytic, cathode by-pass

RESISTORS
R1    220M             B minus to chassis
R2    3.3 MEG          AVC filter
R3    500M volume control with switch
R4    10 MEG           grid leak
R5    220M             plate load
R6    470M             grid leak, output
R7    150 ohms         cathode, output
R8    1200 ohms 1 watt filter
R9    33 ohms          surge
R10   47M              screen

PL1   Dial lamp, 6-8 volts
`;

/** An amplifier with cans of several sections, as a table with tabs. */
export const TERN_LIST = `Ref\tDescription\tValue\tRating\tTol.
R1\tInput grid leak\t1 meg\t1/2 W\t20%
R2\tCathode\t1500 ohm\t1/2 W\t10%
R3\tPlate load\t100K\t1 W\t10%
R4\tPlate load\t100K\t1 W\t10%
R5\tPhase splitter cathode\t47K\t1 W\t5%
R6\tGrid leak, output\t270K\t1/2 W\t10%
R7\tGrid leak, output\t270K\t1/2 W\t10%
R8\tGrid stop\t1000 ohm\t1/2 W\t20%
R9\tGrid stop\t1000 ohm\t1/2 W\t20%
R10\tCathode, output, wirewound\t250 ohm\t10 W\t10%
R11\tFeedback\t5600 ohm\t1/2 W\t5%
R12\tDecoupling\t22K\t1 W\t10%
R13\tBleeder\t100K\t2 W\t10%
C1\tCathode by-pass, electrolytic\t25 mfd\t25 V\t
C2\tCoupling, paper\t.1 mfd\t400 V\t20%
C3\tCoupling, paper\t.25 mfd\t600 V\t20%
C4\tCoupling, paper\t.25 mfd\t600 V\t20%
C5A\tFirst filter, electrolytic\t40 mfd\t475 V\t
C5B\tSecond filter, electrolytic\t20 mfd\t475 V\t
C5C\tDecoupling, electrolytic\t20 mfd\t450 V\t
C6\tFeedback, mica\t120 mmf\t500 V\t10%
C7\tLine to chassis, paper\t.02 mfd\t600 V\t20%
`;
