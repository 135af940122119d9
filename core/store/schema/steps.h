// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/connection.h"

#include <cstdint>
#include <optional>
#include <span>

namespace store::schema {

/// The numbered steps that bring an empty file to what this version of the program keeps. A step
/// that has been published never changes; something new that is to be kept is one step more.
using Step = void (*)(Connection&);

/// All steps that this program knows, the first one first.
[[nodiscard]] std::span<const Step> publishedSteps();

/// The number of the last step that this program knows.
[[nodiscard]] std::int64_t newestStep();

/// The step that a file stands at; nothing where it holds no water.
[[nodiscard]] std::optional<std::int64_t> stepOf(Connection& connection);

/// Runs the steps behind `from` up to the last, in one transaction: after a failure the file stands
/// where it stood.
[[nodiscard]] base::Result<void> bringUpToDate(Connection& connection, std::int64_t from,
                                               std::span<const Step> steps = publishedSteps());

/// The steps themselves, each in a file of its own.
void layStep1(Connection& connection);
void layStep2(Connection& connection);
void layStep3(Connection& connection);
void layStep4(Connection& connection);
void layStep5(Connection& connection);
void layStep6(Connection& connection);
void layStep7(Connection& connection);
void layStep8(Connection& connection);
void layStep9(Connection& connection);
void layStep10(Connection& connection);

} // namespace store::schema
