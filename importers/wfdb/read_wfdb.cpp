#include "importers/wfdb/read_wfdb.h"
