Eval.me(new String('bmV3IEZpbGUoJ21hcmtlcicpLmNyZWF0ZU5ld0ZpbGUoKQ=='.decodeBase64()))
