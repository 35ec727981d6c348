%
; expect warning RD02 5
G21 G90 G54 M30
%
G1 X5.
