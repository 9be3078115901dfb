#include "core/record/entry.h"
