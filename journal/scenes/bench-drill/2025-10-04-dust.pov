// jpg 1600x1200 blur 50-110 taken "2025:10:04 22:47:13"
#include "shop.inc"
Cam(<-16, 17, -32>, <1, -3.6, -5.5>, 37)
LampLight()
LatheRoom(38)
Saddle(2) ToolPost(2, -4) cylinder { <2 - 16, -.1, -3.9>, <4, -.1, -3.9>, .62 texture { T_Dull } }
#declare DC = <.07,.068,.066>;
object { Dust(12, 9, 4.2, DC, 3) translate <-.5, -5.1, -11> } object { Dust(8, 8, 3, DC, 7) translate <6, -7.4, -3> } object { Dust(9, 9, 3.2, DC, 9) translate <-4.4, -7.5, -6> } object { Dust(5, 5, 1.6, DC, 11) translate <2.4, 1.95, -4.3> } object { Dust(22, 12, 5, DC, 13) translate <-14, -9.4, -1> } object { Dust(20, 12, 5, DC, 17) translate <19, -9.4, 0> }
union { cone { <.5, 0, 0>, .75, <-7, 0, 0>, .55 texture { T_Handle } } object { RB(<.4, -.7, -1.5>, <2.2, .7, 1.5>, .15) texture { T_Steel } } #for (I, 0, 160) #local Q = <0, (rand(Sd) - .5)*1, (rand(Sd) - .5)*2.7>; cylinder { <2, Q.y, Q.z>, <5.6 + rand(Sd)*.5, Q.y*1.5 - .2, Q.z*1.3>, .045 pigment { rgb <.42,.33,.2> } } #end rotate <0, 28, -4> translate <12, -6.6, -10> }
