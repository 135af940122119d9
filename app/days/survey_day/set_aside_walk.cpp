// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/set_aside_walk.h"

#include "app/chart/pointer_cache.h"
#include "app/chart/verdict_now.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"
#include "app/wording/words.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace days::survey_day {

using chart::SoundingPick;
using soundings::Verdict;

namespace {

/// The soundings that were set aside when the survey was looked over, by reason.
using Judged = std::array<std::vector<SoundingPick>, soundings::allVerdicts.size()>;

std::shared_ptr<const Judged> judgedOf(const Checked& checked) {
    static chart::PointerCache<water::CheckedSurvey, Judged> cache;
    return cache.of(checked, [](const water::CheckedSurvey& of) {
        Judged judged;
        for (std::size_t d = 0; d < of.survey.days.size(); ++d) {
            const std::vector<Verdict>& verdicts = of.survey.days[d].verdicts;
            for (std::size_t i = 0; i < verdicts.size(); ++i) {
                if (verdicts[i] != Verdict::kept) {
                    judged[static_cast<std::size_t>(verdicts[i])].push_back(
                        {static_cast<int>(d), i});
                }
            }
        }
        return judged;
    });
}

/// Calls `take` with each sounding that the user has had in hand, of those that were looked over.
template <class Take>
void forHands(const std::vector<soundings::SurveyDay>& days, const reduction::ReducedSurvey& survey,
              const Take& take) {
    for (std::size_t d = 0; d < std::min(days.size(), survey.days.size()); ++d) {
        std::vector<std::size_t> hands;
        std::ranges::set_union(days[d].setAsideByHand, days[d].keptByHand,
                               std::back_inserter(hands));
        for (const std::size_t i : hands) {
            if (i < survey.days[d].verdicts.size()) {
                take(d, i);
            }
        }
    }
}

} // namespace

std::vector<std::pair<Verdict, std::size_t>>
reasonsFor(const std::vector<soundings::SurveyDay>& days, const Checked& checked) {
    // Of a million soundings few were ever in a hand: only those are counted anew.
    std::array<std::size_t, soundings::allVerdicts.size()> counts{};
    const auto judged = judgedOf(checked);
    for (std::size_t reason = 0; reason < counts.size(); ++reason) {
        counts[reason] = (*judged)[reason].size();
    }
    counts[static_cast<std::size_t>(Verdict::byHand)] = 0;
    forHands(days, checked->survey, [&](std::size_t d, std::size_t i) {
        const Verdict before = checked->survey.days[d].verdicts[i];
        if (before != Verdict::kept && before != Verdict::byHand) {
            --counts[static_cast<std::size_t>(before)];
        }
        ++counts[static_cast<std::size_t>(chart::verdictNow(days[d], checked->survey.days[d], i))];
    });
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

SetAsideWalk::SetAsideWalk(const std::vector<soundings::SurveyDay>& days, const Checked& checked,
                           Verdict reason) {
    const reduction::ReducedSurvey& survey = checked->survey;
    const auto takeIfHeld = [&](std::size_t d, std::size_t i) {
        if (chart::verdictNow(days[d], survey.days[d], i) == reason) {
            picks_.push_back({static_cast<int>(d), i});
        }
    };
    if (reason == Verdict::byHand) {
        forHands(days, survey, takeIfHeld);
        return;
    }
    for (const SoundingPick& pick : (*judgedOf(checked))[static_cast<std::size_t>(reason)]) {
        if (static_cast<std::size_t>(pick.day) < days.size()) {
            takeIfHeld(static_cast<std::size_t>(pick.day), pick.sounding);
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
        return wording::Tongue::tr("%1 of %2: %3")
            .arg(wording::Words::count(*position + 1), wording::Words::count(walk.size()), name);
    }
    return walk.size() == 0
               ? wording::Tongue::tr("none left: %1").arg(name)
               : wording::Tongue::tr("%1 left: %2").arg(wording::Words::count(walk.size()), name);
}

} // namespace days::survey_day
