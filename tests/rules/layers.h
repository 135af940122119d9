// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <set>
#include <string>
#include <string_view>

namespace rules {

/// Which folders a folder may include, as a CMakeLists.txt declares them.
using Layers = std::map<std::string, std::set<std::string>>;

/// Reads every `command(name USES a b c [FENCED ...])` of a CMakeLists.txt; comments and line
/// breaks are allowed anywhere.
[[nodiscard]] Layers layersIn(std::string_view cmakeLists, std::string_view command);

} // namespace rules
