// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <cstdint>
#include <optional>

namespace store::schema {

/// The numbered steps that bring an empty file to what this version of the program keeps. A step
/// that has been published never changes; something new that is to be kept is one step more.
using Step = void (*)(Connection&);

/// The number of the last step that this program knows.
[[nodiscard]] std::int64_t newestStep();

/// The step that a file stands at; nothing where it holds no water.
[[nodiscard]] std::optional<std::int64_t> stepOf(Connection& connection);

/// Runs the steps behind `from` up to the newest, in one transaction.
[[nodiscard]] base::Result<void> bringUpToDate(Connection& connection, std::int64_t from);

/// The steps themselves, each in a file of its own.
void layStep1(Connection& connection);

} // namespace store::schema
