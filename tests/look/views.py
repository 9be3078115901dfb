"""What the pictures show. A view is a name and the steps of a tour that lead to it (the words are
explained in app/window/look/tour.h); its picture is taken after the last step, and what is in front
is closed again. A new place, tab or dialog is one line here.

Steps name menu entries by their keys, so that they hold in every language.
"""

# Places of a record, reached by their keys.
PLACES = [
    ("place-record", ["do F7"]),
    ("place-debrief", ["do F8", "await DebriefPage"]),
    ("place-debrief-at-a-moment", ["do PgDown", "do PgDown"]),
    ("place-debrief-projector", ["do F12"]),
    ("place-handover", ["do F12", "do F9", "await SheetPreview"]),
    ("place-handover-larger", ["do Alt++", "do Alt++"]),
    ("place-handover-german-letter", ["do Alt+0", "do Ctrl+Shift+G", "do Ctrl+Shift+L"]),
    ("place-handover-english-a4", ["do Ctrl+Shift+E", "do Ctrl+Shift+A"]),
]

# Tabs of the side panel, and of the area under the rows.
TABS = [
    ("tab-working", ["do F7", "do F2"]),
    ("tab-all-figures", ["do F3"]),
    ("tab-what-happened", ["do F10"]),
    ("tab-problems", ["do F5"]),
    ("tab-tables", ["do Shift+F3"]),
    ("tab-waves", ["do Shift+F2"]),
]

# A choice, a stretch, the waves from close to whole.
LOOKING = [
    ("no-working", ["do F2", "do Ctrl+0"]),
    ("working-of-the-third-figure", ["do Ctrl+3"]),
    ("a-pause-selected", ["do .", "do .", "do ."]),
    ("a-shock-selected", ["do Ctrl+."]),
    ("waves-whole", ["do Ctrl+Home"]),
    ("waves-twenty-seconds", ["do Ctrl+End"]),
    ("waves-close", ["do +", "do +", "do +"]),
    ("pauses-above-half-a-second", ["figures Ctrl+T, 1"]),
    ("pauses-above-five-seconds", ["figures Ctrl+T, 6"]),
    ("pauses-as-usual", ["figures Ctrl+T, 3"]),
]

# What the signals say.
SIGNALS = [
    ("signals-a-shock", ["do F7", "do F2", "do Shift+F2", "do Ctrl+,"]),
    ("signals-hint-working", ["do Shift+H"]),
    ("signals-figures", ["do Ctrl+3", "do F3"]),
    ("signals-twenty-seconds", ["do Ctrl+End"]),
    ("signals-suppressed", ["do E"]),
    ("signals-ecg-around-shocks", ["do E", "do Shift+E"]),
    ("signals-never", ["figures Ctrl+H, 2", "do Shift+F2"]),
    ("signals-always", ["figures Ctrl+H, 3"]),
    ("signals-where-nothing-else", ["figures Ctrl+H, 1"]),
]

MENUS = [(f"menu-{n}", [f"menu {n}"]) for n in range(1, 9)] + [
    ("menu-1-opened-lately", ["menu 1 1"]),
    ("menu-1-without-a-header", ["menu 1 2"]),
    ("menu-1-sheet", ["menu 1 3"]),
    ("menu-3-from-the-signals", ["menu 3 1"]),
    ("menu-2-pause", ["menu 2 1"]),
    ("menu-2-window-end", ["menu 2 2"]),
    ("menu-2-guideline", ["menu 2 3"]),
    ("menu-7-colours", ["menu 7 1"]),
    ("menu-7-language", ["menu 7 2"]),
]

DIALOGS = [
    ("dialog-keys", ["do F1"]),
    ("dialog-about", ["do Shift+F1"]),
    ("dialog-hint", ["do Shift+H"]),
    ("dialog-threshold", ["do Ctrl+T, 0"]),
    ("dialog-profile", ["do Ctrl+G, 0"]),
    ("dialog-open", ["do Ctrl+O"]),
    ("dialog-export", ["do Ctrl+E"]),
    ("dialog-print", ["do Ctrl+P"]),
]

# Sentences over everything; {scratch} is a folder that may be written to.
NOTICES = [
    ("notice-written", ["do Ctrl+E", "answer {scratch}/sheet.pdf", "await NoticeBar"]),
    ("notice-profile-refused", ["do Shift+Escape", "do Ctrl+G, 0", "answer {scratch}/not-a-profile.json", "await NoticeBar"]),
    ("notice-language", ["do Shift+Escape", "do Ctrl+L, 1", "await NoticeBar"]),
]

# Without a record; the files are made by records.py. What moves is not waited for until it rests.
GLANCE = "glance"
WITHOUT_RECORD = [
    ("welcome-first", []),
    ("sheet-without-a-recording", ["do Ctrl+N"]),
    ("folder", ["do Alt+Left", "start {scratch}", "await FolderPage"]),
    ("folder-without-recordings", ["start {scratch}/config", "await FolderPage"]),
    ("reading", ["start {scratch}/slow.resuslog", "await LoadingPage", GLANCE]),
    ("refused-unknown", ["do Escape", "open {scratch}/unknown.bin"]),
    ("refused-no-header", ["open {scratch}/no-header.resuslog"]),
    ("refused-newer", ["open {scratch}/newer.resuslog"]),
    ("refused-not-there", ["open {scratch}/not-there.resuslog"]),
    ("refused-empty", ["open {scratch}/empty.resuslog"]),
    ("welcome-again", ["open {sample}", "do Ctrl+W"]),
]

# Many records: nothing yet, two and eight side by side, seasons of 0, 1, 4 and 40.
def _season(records, folder):
    return [(f"compare-{records}-records",
             ["do C", "do Shift+F", f"answer {{scratch}}/{folder}", "await SeasonTable"]),
            (f"compare-{records}-spread", ["do Shift+F6"]),
            (f"compare-{records}-over-time", ["do Shift+F7"]),
            (f"compare-{records}-where-the-time-goes", ["do Shift+F8"]),
            (f"compare-{records}-worth-a-look", ["do Shift+F9"])]


# All of them side by side; with fewer than two the window asks which ones, of forty it says how many may be.
def _beside(records):
    came = [] if records < 2 else ["await BesideCanvas" if records <= 8 else "await NoticeBar"]
    return [(f"compare-{records}-beside", ["do Shift+F4", "press Ctrl+A", "do Shift+C"] + came)]


COMPARE = [
    ("compare-nothing-yet", ["do C"]),
    ("compare-two-drills", ["start {scratch}/two-drills", "await FolderPage"]),
    ("compare-two-drills-beside", ["do Shift+C", "await BesideCanvas"]),
    ("compare-two-drills-at-the-shock", ["do Shift+A", "do Shift+A", "do Shift+A", "do Shift+A"]),
    ("compare-two-drills-long-rows", ["do Shift+L"]),
    ("compare-eight", ["start {scratch}/eight", "await FolderPage"]),
    ("compare-eight-beside", ["do Shift+C", "await BesideCanvas"]),
] + [view for n in (0, 1, 4, 40) for view in _season(n, f"season-{n}") + _beside(n)] + [
    ("compare-mark", ["do Shift+F7", "do Shift+T"]),
    ("compare-unreadable", ["do Shift+W"]),
    ("compare-report", ["do Shift+Q"]),
    ("compare-moved", ["do Shift+I", "answer {scratch}/season-4", "answer {scratch}/moved.sqlite",
                       "await SeasonTable", "do Shift+V"]),
    ("compare-beside-the-one-before", ["open {record}", "do Shift+B", "await BesideCanvas"]),
]

# A hundred thousand records: {many} is their archive. Which views there are is as above.
MANY = [
    ("compare-100000-latest", ["start {many}", "latest", GLANCE]),
    ("compare-100000-records", ["season"]),
    ("compare-100000-marked", ["press Shift+Down", "press Shift+Down"]),
    ("compare-100000-beside", ["do Shift+C", "await BesideCanvas"]),
    ("compare-100000-spread", ["do Shift+F6", "season"]),
    ("compare-100000-over-time", ["do Shift+F7", "season"]),
    ("compare-100000-where-the-time-goes", ["do Shift+F8", "season"]),
    ("compare-100000-worth-a-look", ["do Shift+F9", "season"]),
]

# What the choosers offer beside that; they are found by their English names.
MANY_CHOSEN = [
    ("compare-100000-sorted", ["do Shift+F4", "focus Sort by"] + ["press Down"] * 13 + ["season"]),
    ("compare-100000-filtered", ["focus Site", "press Down", "season"]),
    ("compare-100000-all-again", ["do Shift+U", "season"]),
    ("compare-100000-spread-by-team", ["do Shift+F6", "focus Apart by", "press Down", "season"]),
    ("compare-100000-spread-by-quarter", ["focus Apart by", "press Down", "season"]),
    ("compare-100000-spread-by-the-last-quarter", ["focus Device on to first shock by quarter (rescues)", "press End"]),
    ("compare-100000-spread-of-all", ["focus Apart by", "press Down", "season"]),
    ("compare-100000-spread-of-another-figure", ["focus Figure"] + ["press Down"] * 4 + ["season"]),
    ("compare-100000-weeks", ["do Shift+F7", "focus A point is", "press Down", "season"]),
    ("compare-100000-months", ["focus A point is", "press Down", "season"]),
    ("compare-100000-quarters", ["focus A point is", "press Down", "season"]),
    ("compare-100000-run-chart", ["focus Drawn as", "press Down", "season"]),
    ("compare-100000-control-chart", ["focus Drawn as", "press Down", "season"]),
    ("compare-100000-stages-by-record", ["do Shift+F8", "focus Drawn as", "press Down", "season"]),
    ("compare-100000-stages-from-the-call", ["focus Counted from", "press Down", "season"]),
]

# The README's pictures of the window, named as they are in resources/pictures.
README = [
    ("window", ["open {record}"]),
]

RECORD = PLACES + TABS + LOOKING
EVERYTHING = WITHOUT_RECORD + [("opened", ["open {record}"])] + RECORD + MENUS + DIALOGS + NOTICES
