#include "app/papers/handover_sheet.h"
