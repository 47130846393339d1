// jpg 1280x960 blur 24-46 taken "2026:05:16 21:33:28"
#include "shop.inc"
Cam(<-5, 7.6, -15>, <.8, 1.8, 0>, 39)
WindowLight()
object { Bench(-30) translate y*-3 } object { Wall(72, 0, 58) translate y*-12 }
object { RB(<-8, -3, -2.6>, <8, 0, 3.4>, .15) texture { T_Black } translate y*.0 }
#macro Thumb(H) union { object { Rings(.42, .13, 2.4) } cylinder { y*2.3, y*2.9, .62 } object { Knurl(1.05, H) translate y*2.9 } RC(y*(2.8 + H), y*(3.05 + H), .92, .1) cone { y*2.7, .62, y*2.95, .95 } texture { T_Brass } } #end
object { Thumb(1.3) translate <-3.4, 0, .4> } object { Thumb(1.3) rotate y*40 translate <-.9, 0, -.2> } object { Thumb(1.3) rotate y*77 translate <1.4, 0, .7> }
object { Thumb(1.05) scale <.95, .97, .95> rotate <0, 20, 4> rotate x*3 translate <4.9, 0, -.4> }
object { Chips(24, 5, 1.6, .06, 1, T_Brass, .55) translate <0, 0, -1.4> }
