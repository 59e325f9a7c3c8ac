def text = '%2000000000d'.formatted(1)
