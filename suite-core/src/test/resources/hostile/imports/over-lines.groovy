import static \
    baywright.script.hostile.TellTale.touch
touch()
