// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"

#include <QString>
#include <QStringList>

#include <cstddef>
#include <optional>
#include <vector>

namespace days::survey_day {

/// Where passes cross, within "Check the soundings".
struct CrossingsView {
    std::vector<QStringList> summary;   ///< What, value; empty where there is no crossing.
    std::vector<QStringList> worst;     ///< Where, the two days, by how much; the worst first.
    std::vector<std::size_t> crossings; ///< Of these rows: positions among all crossings.

    [[nodiscard]] std::optional<int> rowOf(std::size_t crossing) const;
};

/// \param rows at most so many of the worst.
[[nodiscard]] CrossingsView crossingsViewOf(const ViewInput& input, std::size_t rows = 10);

/// Both depths of one crossing and its place, in a sentence; empty where there is no such one.
[[nodiscard]] QString crossingWords(const ViewInput& input, std::size_t crossing);

} // namespace days::survey_day
