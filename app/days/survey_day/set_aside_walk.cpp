// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/set_aside_walk.h"

#include "app/chart/verdict_now.h"
#include "app/wording/spoken_names.h"
#include "app/wording/words.h"

#include <algorithm>
#include <array>

namespace days::survey_day {

using chart::SoundingPick;
using soundings::Verdict;

std::vector<std::pair<Verdict, std::size_t>>
reasonsFor(const std::vector<soundings::SurveyDay>& days, const reduction::ReducedSurvey& survey) {
    std::array<std::size_t, soundings::allVerdicts.size()> counts{};
    for (std::size_t d = 0; d < std::min(days.size(), survey.days.size()); ++d) {
        for (std::size_t i = 0; i < survey.days[d].verdicts.size(); ++i) {
            ++counts[static_cast<std::size_t>(chart::verdictNow(days[d], survey.days[d], i))];
        }
    }
    std::vector<std::pair<Verdict, std::size_t>> reasons;
    for (const Verdict verdict : soundings::allVerdicts) {
        const std::size_t count = counts[static_cast<std::size_t>(verdict)];
        if (verdict != Verdict::kept && count > 0) {
            reasons.emplace_back(verdict, count);
        }
    }
    std::ranges::stable_sort(reasons, std::ranges::greater{},
                             &std::pair<Verdict, std::size_t>::second);
    return reasons;
}

SetAsideWalk::SetAsideWalk(const std::vector<soundings::SurveyDay>& days,
                           const reduction::ReducedSurvey& survey, Verdict reason) {
    for (std::size_t d = 0; d < std::min(days.size(), survey.days.size()); ++d) {
        for (std::size_t i = 0; i < survey.days[d].verdicts.size(); ++i) {
            if (chart::verdictNow(days[d], survey.days[d], i) == reason) {
                picks_.push_back({static_cast<int>(d), i});
            }
        }
    }
}

std::optional<std::size_t> SetAsideWalk::positionOf(SoundingPick pick) const {
    const auto found = std::lower_bound(picks_.begin(), picks_.end(), pick);
    return found != picks_.end() && *found == pick
               ? std::optional(static_cast<std::size_t>(found - picks_.begin()))
               : std::nullopt;
}

std::optional<SoundingPick> SetAsideWalk::after(std::optional<SoundingPick> pick) const {
    if (picks_.empty()) {
        return std::nullopt;
    }
    const auto found =
        pick ? std::upper_bound(picks_.begin(), picks_.end(), *pick) : picks_.begin();
    return found == picks_.end() ? picks_.front() : *found;
}

std::optional<SoundingPick> SetAsideWalk::before(std::optional<SoundingPick> pick) const {
    if (picks_.empty()) {
        return std::nullopt;
    }
    const auto found =
        pick ? std::lower_bound(picks_.begin(), picks_.end(), *pick) : picks_.begin();
    return found == picks_.begin() ? picks_.back() : *std::prev(found);
}

QString walkWords(const SetAsideWalk& walk, std::optional<Verdict> reason,
                  std::optional<SoundingPick> chosen) {
    if (!reason) {
        return {};
    }
    const QString name = wording::spoken(*reason);
    const auto position = chosen ? walk.positionOf(*chosen) : std::nullopt;
    if (position) {
        return QStringLiteral("%1 of %2: %3")
            .arg(wording::Words::count(*position + 1), wording::Words::count(walk.size()), name);
    }
    return walk.size() == 0
               ? QStringLiteral("none left: %1").arg(name)
               : QStringLiteral("%1 left: %2").arg(wording::Words::count(walk.size()), name);
}

} // namespace days::survey_day
