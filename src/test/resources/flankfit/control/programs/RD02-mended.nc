%
; absent RD02
G21 G90 G54 M30
%

