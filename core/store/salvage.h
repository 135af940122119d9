// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/store/connection.h"

#include <cstddef>
#include <string>
#include <vector>

namespace store {

/// What of one table could be read.
struct SalvagedTable {
    std::string name;
    std::size_t rows = 0;
    std::size_t refused = 0; ///< Rows that were read, but hold what the table cannot.
    std::size_t gaps = 0;    ///< Stretches of rows that lie in pages that cannot be read.
    bool isLost = false;     ///< The table itself is not to be found.
};

/// Copies what the user has, table by table and row by row, out of a file that is not whole into
/// the empty tables of another one of the same step, as it stands: whether it makes sense is not
/// asked. What follows from the water is left out, as it can be made again. \param from reads in
/// spite of damage; a row that cannot be reached is gone round.
[[nodiscard]] std::vector<SalvagedTable> salvageRows(Connection& from, Connection& to,
                                                     base::Progress& progress);

} // namespace store
