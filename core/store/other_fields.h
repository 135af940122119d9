// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/other_field.h"
#include "core/store/statement.h"

#include <string>
#include <vector>

namespace store {

/// Fields with names that mean nothing here, as JSON in their order: [["moon","full"],...]; empty
/// for none.
[[nodiscard]] std::string keptFields(const std::vector<logbook::OtherField>& fields);
/// The other way, of a column of the present row; what is none damages the connection.
[[nodiscard]] std::vector<logbook::OtherField> fieldsAt(Connection& connection, Statement& rows,
                                                        int column);

} // namespace store
