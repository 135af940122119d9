// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/sounding_pick.h"
#include "core/soundings/survey_day.h"
#include "core/soundings/verdict.h"
#include "core/water/document/derived.h"

#include <QString>

#include <cstddef>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace days::survey_day {

/// A survey that was looked over, by which its soundings are told apart once.
using Checked = std::shared_ptr<const water::CheckedSurvey>;

/// Reasons with how many soundings each has set aside, the most frequent first.
[[nodiscard]] std::vector<std::pair<soundings::Verdict, std::size_t>>
reasonsFor(const std::vector<soundings::SurveyDay>& days, const Checked& checked);

/// The soundings set aside for one reason, in the order of days and tracks, to be gone through one
/// by one. A value; a sounding that has left it still has one before it and one after it.
class SetAsideWalk {
public:
    SetAsideWalk() = default;
    SetAsideWalk(const std::vector<soundings::SurveyDay>& days, const Checked& checked,
                 soundings::Verdict reason);

    [[nodiscard]] std::size_t size() const { return picks_.size(); }
    [[nodiscard]] const std::vector<chart::SoundingPick>& picks() const { return picks_; }
    /// Which of them it is, from 0.
    [[nodiscard]] std::optional<std::size_t> positionOf(chart::SoundingPick pick) const;
    /// The one after it, round again to the first; the first where nothing is chosen yet.
    [[nodiscard]] std::optional<chart::SoundingPick>
    after(std::optional<chart::SoundingPick> pick) const;
    [[nodiscard]] std::optional<chart::SoundingPick>
    before(std::optional<chart::SoundingPick> pick) const;

private:
    std::vector<chart::SoundingPick> picks_; ///< Ascending.
};

/// Where one stands in the walk: "3 of 41: spike"; how many are left where the chosen one is none
/// of them; empty as long as no reason was chosen.
[[nodiscard]] QString walkWords(const SetAsideWalk& walk, std::optional<soundings::Verdict> reason,
                                std::optional<chart::SoundingPick> chosen);

} // namespace days::survey_day
