// jpg 1600x1200 blur 54-120 taken "2025:12:06 20:30:44"
#include "shop.inc"
Cam(<12, 17, -31>, <2.6, 1, -2.4>, 34)
TubeLight()
MillRoom(-7, 49)
Vice(13, 6.6)
difference { RB(<-6, -3, -6.6>, <2, 3.8, 0>, .1) cylinder { <-9, .9, -3.3>, <9, .9, -3.3>, 1.6 } box { <-9, .8, -9>, <9, 1, -4> texture { T_Mach } } texture { T_Alu } }
#for (I, 0, 1) object { RC(0, y*.8, .55, .06) texture { T_Black } translate <-4 + I*4, 3.8, -5.6> } #end
difference { cylinder { <-8.6, .9, -3.3>, <12, .9, -3.3>, 1.59 } cylinder { <-9, .9, -3.3>, <13, .9, -3.3>, 1.1 texture { T_Dull } } RB(<2.6, 1.9, -3.7>, <8.8, 4, -2.9>, .35) texture { T_Polish } }
object { EndMill(.38, 6) translate <8.3, 2, -3.3> } cylinder { <8.3, 6.8, -3.3>, <8.3, 9, -3.3>, 1.5 texture { T_Steel } } MillHead(<8.3, 9, -3.3>)
object { Chips(240, 8, 3.4, .3, 0, T_ChipSteel, .5) translate <5, -7, -9> } object { Chips(50, 3, 1, .1, 0, T_ChipSteel, .45) translate <1, .25, -8.2> }
