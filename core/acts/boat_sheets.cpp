// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/boat_sheets.h"

#include <algorithm>

namespace acts {

namespace {

/// Whoever has not written up a day after a season will not do it any more. Our choice (no source).
constexpr std::size_t mostSheets = 60;

} // namespace

base::Result<water::Water> takeSheet(const water::Water& water, const water::BoatSheet& sheet) {
    if (sheet.stops.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "the sheet has no stop to write up", "sheet",
                          "choose marks for the day first");
    }
    water::Water changed = water;
    auto& sheets = changed.sheets;
    std::erase_if(sheets, [&](const water::BoatSheet& other) { return other.day == sheet.day; });
    const auto isBefore = [](const water::BoatSheet& a, const water::BoatSheet& b) {
        return std::chrono::sys_days(a.day) < std::chrono::sys_days(b.day);
    };
    sheets.insert(std::ranges::upper_bound(sheets, sheet, isBefore), sheet);
    if (sheets.size() > mostSheets) {
        sheets.erase(sheets.begin());
    }
    return changed;
}

} // namespace acts
