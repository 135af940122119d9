// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/spatial_functions.h"

#include "core/store/geometry_blob.h"

#include <sqlite3.h>

namespace store {

namespace {

std::optional<LonLatBox> boxOfArgument(sqlite3_value* argument) {
    if (sqlite3_value_type(argument) != SQLITE_BLOB) {
        return std::nullopt;
    }
    const auto* bytes = static_cast<const std::byte*>(sqlite3_value_blob(argument));
    const auto size = static_cast<std::size_t>(sqlite3_value_bytes(argument));
    return boxOf(std::span(bytes, size));
}

/// One side of the box; null for an empty geometry.
template <double LonLatBox::*Side>
void giveSide(sqlite3_context* context, int, sqlite3_value** arguments) {
    const auto box = boxOfArgument(arguments[0]);
    if (box && !box->isEmpty()) {
        sqlite3_result_double(context, (*box).*Side);
    } else {
        sqlite3_result_null(context);
    }
}

void giveIsEmpty(sqlite3_context* context, int, sqlite3_value** arguments) {
    const auto box = boxOfArgument(arguments[0]);
    if (box) {
        sqlite3_result_int(context, box->isEmpty() ? 1 : 0);
    } else {
        sqlite3_result_null(context);
    }
}

} // namespace

void addSpatialFunctions(Connection& connection) {
    using Function = void (*)(sqlite3_context*, int, sqlite3_value**);
    const auto add = [&](const char* name, Function function) {
        const int code = sqlite3_create_function_v2(
            connection.handle(), name, 1, SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_INNOCUOUS,
            nullptr, function, nullptr, nullptr, nullptr);
        if (code != SQLITE_OK) {
            connection.failWith(code);
        }
    };
    add("ST_MinX", giveSide<&LonLatBox::west_deg>);
    add("ST_MaxX", giveSide<&LonLatBox::east_deg>);
    add("ST_MinY", giveSide<&LonLatBox::south_deg>);
    add("ST_MaxY", giveSide<&LonLatBox::north_deg>);
    add("ST_IsEmpty", giveIsEmpty);
}

} // namespace store
