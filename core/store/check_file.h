// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/store/check_report.h"
#include "core/store/connection.h"

namespace store {

/// Looks through the whole file: is every page whole, does every row hold what its column should,
/// do the tables agree with one another. \return an error only where that cannot be told;
/// cancelled.
[[nodiscard]] base::Result<CheckReport> checkFile(Connection& connection, base::Progress& progress);

} // namespace store
