// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/facts.h"

#include "core/water/document/swap_parts.h"

#include <array>

namespace acts {

using base::Result;
using water::Part;
using water::Water;

namespace {

Result<void> checkSettings(const water::Settings& settings) {
    if (const auto problems = water::problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front(), "settings",
                          "choose another value");
    }
    return {};
}

} // namespace

Result<Water> changeFacts(const Water& water, const std::function<void(Water&)>& changeThem) {
    Water changed = water;
    changeThem(changed);
    if (changed.settings != water.settings) {
        if (auto right = checkSettings(changed.settings); !right) {
            return std::unexpected(right.error());
        }
    }
    Water after = water;
    water::swapParts(after, changed, std::array{Part::facts, Part::plan});
    return after;
}

Result<Water> setSettings(const Water& water, const water::Settings& settings) {
    if (auto right = checkSettings(settings); !right) {
        return std::unexpected(right.error());
    }
    Water after = water;
    after.settings = settings;
    return after;
}

Result<Water> setHouseRules(const Water& water, const logbook::HouseRules& rules) {
    Water after = water;
    after.houseRules = rules;
    return after;
}

} // namespace acts
