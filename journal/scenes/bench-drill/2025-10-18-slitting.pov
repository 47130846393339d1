// jpg 1600x1200 blur 60-130 taken "2025:10:18 21:30:05"
#include "shop.inc"
Cam(<14, 19, -38>, <2.2, 5.6, -1>, 34)
TubeLight()
MillRoom(0, 41)
object { AnglePlate(22, 12, 11) translate <-2, 0, 6> }
object { Head(T_Cast, 1, 1, 1) rotate x*90 translate <-1.6, 6, 0> }
object { RB(<-7, 0, -3>, <-5, 3.4, 4>, .1) texture { T_Steel } } object { RB(<1.6, 0, -3>, <3.6, 3.1, 4>, .1) texture { T_Steel } }
object { Strap(7.2, 4) rotate y*65 translate <-2.2, 0, -6> }
// saw
#macro Saw(N, R) difference { prism { linear_spline -.09, .09, 2*N + 1 #for (I, 0, N - 1) <R*cos(2*pi*I/N), R*sin(2*pi*I/N)>, <(R - .42)*cos(2*pi*(I + .25)/N), (R - .42)*sin(2*pi*(I + .25)/N)>, #end <R, 0> } cylinder { -y, y, .8 } cylinder { -y, y*-.05, R*.6 } texture { T_HSS } } #end
union { object { Saw(44, 5) } cylinder { y*.08, y*7, 1.2 texture { T_Steel } } cylinder { y*.08, y*.6, 2 texture { T_Steel } } cylinder { -y*.1, -y*.6, 1.9 texture { T_Steel } } object { Hex(.6, 1.3, .9) rotate x*180 translate -y*.1 texture { T_Black } } translate <8.8, 6, -1> }
MillHead(<8.8, 13, -1>)
object { Chips(240, 6, 5, .4, 0, T_ChipIron, .5) translate <5, 0, -4> }
