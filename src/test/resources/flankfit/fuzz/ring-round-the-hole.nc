(The mill runs in the solid round its hole: nothing can be measured there)
G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.
T4 M6
G43 H4 Z5.
G0 X0 Y0
G1 Z-12.
G91 G1 X12.
G3 I-12. Z1.
G3 I-12. Z1.
G1 X-12.
G90 G0 Z50.
M30
