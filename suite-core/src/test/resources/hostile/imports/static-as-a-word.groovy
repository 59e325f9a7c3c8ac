import static baywright.script.hostile.TellTale.touch as title
title()
