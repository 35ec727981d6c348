; expect warning MD08 4
G21 G90 G54
G91 T1 M6
G0 Z5.
M30
