// jpg 1280x960 blur 40-110 taken "2025:06:14 21:37:45"
#include "shop.inc"
Cam(<-15, 16, -27>, <-.2, 2, -2.4>, 35)
TubeLight()
MillRoom(-7, 2)
Vice(13, 5)
difference { RB(<-6.2, -3, -5>, <6.2, 2.5, 0>, .1) box { <-9, -.6, -3.4>, <9, 4, -1.6> texture { T_Mach } } texture { T_Ground } }
union { cylinder { <0, 1, 0>, <0, 3.6, 0>, .885 texture { T_Polish } } cylinder { <0, 3.5, 0>, <0, 4.2, 0>, .5 texture { T_Steel } } object { Knurl(.75, 4.2) translate y*4.2 texture { T_Steel } } cylinder { y*8.4, y*8.8, .6 texture { T_Steel } } translate <.6, 0, -2.5> }
object { Chips(60, 5, 3, .2, 0, T_ChipSteel, .7) translate <-3, 0.1, -8> }
