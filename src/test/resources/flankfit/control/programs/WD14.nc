; expect warning WD14 3
G21 G90 G54 G0
T1 M6 X5.
M30
