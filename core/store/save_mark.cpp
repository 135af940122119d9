// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/save_mark.h"

#include "core/base/number_text.h"
#include "core/store/statement.h"

#include <cstdint>
#include <random>
#include <string_view>

#include <fmt/format.h>

namespace store {

SaveMark SaveMark::in(Connection& connection) {
    Statement row(connection, "SELECT value FROM water_file WHERE key='last_save'");
    row.ask();
    return row.next() ? SaveMark(row.text(0)) : SaveMark();
}

SaveMark SaveMark::next() const {
    const std::string_view count = std::string_view(text_).substr(0, text_.find('-'));
    std::random_device lot;
    const std::uint64_t drawn = (std::uint64_t{lot()} << 32U) | lot();
    return SaveMark(fmt::format("{}-{:016x}", base::wholeNumberFrom(count).value_or(0) + 1, drawn));
}

void SaveMark::put(Connection& connection) const {
    Statement row(connection, "INSERT INTO water_file (key, value) VALUES ('last_save', ?) "
                              "ON CONFLICT (key) DO UPDATE SET value = excluded.value");
    row.run(text_);
}

} // namespace store
