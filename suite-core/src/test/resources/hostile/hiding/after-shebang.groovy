#!/usr/bin/env groovy«U+000D»new File('marker').createNewFile()
