// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/logbook/house_rules.h"

#include <filesystem>

namespace readers {

/// The fishery's rules from JSON: "rod_limit", "season" {"from": "MM-DD", "to": "MM-DD"},
/// "closed_water" [{"name", "ring" [[lon, lat]...]}], "notes" [text]; all may be missing.
/// \return unusableInput where the text is no JSON or an entry makes no sense (`where` names it).
[[nodiscard]] base::Result<logbook::HouseRules> readHouseRules(const std::filesystem::path& path);

} // namespace readers
