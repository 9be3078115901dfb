#include "core/resuslog/read_log.h"
