// jpg 1600x900 blur 56-120 taken "2025:12:13 21:21:12"
#include "shop.inc"
Cam(<11, 15, -38>, <14, -1, 0>, 44)
LampLight()
LatheRoom(50)
Headstock(-5) FacePlate(0, 7.4, 12) cylinder { <0, 0, 0>, <1, 0, 0>, 1.3 texture { T_Polish } } cone { <1, 0, 0>, 1.2, <3.4, 0, 0>, .1 texture { T_Polish } }
cylinder { <3, 0, 0>, <9, 0, 0>, .72 texture { T_TurnX } } cylinder { <9, 0, 0>, <9.6, 0, 0>, 1.25 texture { T_TurnX } } cylinder { <9.6, 0, 0>, <13, 0, 0>, .95 texture { T_Polish } } cylinder { <13, 0, 0>, <20, 0, 0>, .82 texture { T_TurnX } } cylinder { <20, 0, 0>, <23, 0, 0>, .74 texture { T_Polish } } cylinder { <23, 0, 0>, <27, 0, 0>, .58 texture { T_TurnX } }
// dog, its tail in a slot of the plate and tied with wire
difference { RC(<5, 0, 0>, <6.6, 0, 0>, 2, .3) cylinder { <4, 0, 0>, <8, 0, 0>, .8 } texture { T_Dull } } cylinder { <5.8, 1, 1>, <5.8, 2.6, 2.2>, .36 texture { T_Steel } } object { RC(<5.8, -1.6, -1.6>, <5.8, -3, -3>, .6, .25) texture { T_Dull } } object { RC(<5.8, -3, -3>, <-.6, -3.2, -3.2>, .6, .25) texture { T_Dull } }
torus { 1.2, .1 rotate <60, 20, 0> translate <.8, -3.2, -3.2> texture { T_Brass } } torus { 1.1, .1 rotate <80, 30, 0> translate <1.2, -3.2, -3.2> texture { T_Brass } }
Centre(26.7) Tailstock(31)
Saddle(17) ToolPost(17, -9) ToolBit(17, -11, -.9)
object { Chips(170, 6, 3, .6, 2, T_ChipBlue, .8) translate <16, -9.1, 1> }
