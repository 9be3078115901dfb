#include "importers/csv/read_csv.h"
