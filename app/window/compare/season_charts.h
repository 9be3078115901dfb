/// The makers of charts, where the toolkit's keywords are in force: control charts have `signals`
/// of their own.
#pragma once

// First, so that it does not define them again below.
#include <QObject>

#pragma push_macro("signals")
#undef signals
#include "app/papers/charts/season_charts.h"
#pragma pop_macro("signals")
