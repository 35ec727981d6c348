(A thousand pecks in each of 9999 holes, in a loop: the tape is full first)
G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.
G0 X0 Y0 Z5.
DO1
G91 G83 X1. Z-99. R-1. Q.1 L9999
END1
M30
