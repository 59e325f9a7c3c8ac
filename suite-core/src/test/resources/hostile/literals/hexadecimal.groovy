def a = 0x«4000000×f»
