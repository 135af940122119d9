// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/rank_marks.h"

#include "core/marks/beliefs.h"
#include "core/marks/choose_to_learn.h"
#include "core/marks/judgement.h"

#include <algorithm>
#include <cmath>

namespace marks {

namespace {

constexpr double highWave_m = 0.3;
constexpr double mostlyGuess = 0.5;
constexpr std::size_t leastCap = 2;

/// A candidate with its score.
struct Scored {
    WorkedCandidate worked;
    Surroundings around;
    Judgement judgement;
};

geo::WaterPoint placeOf(const WorkedCandidate& worked) {
    return worked.anchors.lie.centre;
}

sections::SectionNumber sectionAt(const MarkInput& input, geo::WaterPoint place) {
    const auto& map = input.sections.sectionOfCell;
    const grid::Cell c = map.frame().cellOf(place);
    return map.frame().holds(c) ? map[c] : sections::noSection;
}

bool isBetter(const Scored& a, const Scored& b) {
    // Without a log by the sum, which orders as the product does but for rounding: what differs in
    // the last bit alone is equal.
    const double x = a.judgement.worth(0.0);
    const double y = b.judgement.worth(0.0);
    if (x != y) {
        return x > y;
    }
    if (a.worked.candidate.promise != b.worked.candidate.promise) {
        return a.worked.candidate.promise > b.worked.candidate.promise;
    }
    const geo::WaterPoint p = placeOf(a.worked);
    const geo::WaterPoint q = placeOf(b.worked);
    return p.y_m != q.y_m ? p.y_m > q.y_m : p.x_m < q.x_m;
}

WavesOfDay wavesOf(const WorkedCandidate& worked) {
    return {worked.waves, worked.later ? worked.later->waves : std::nullopt};
}

base::Result<std::vector<Scored>> scored(const MarkInput& input, const Plan& plan,
                                         std::vector<WorkedCandidate> candidates,
                                         base::Progress& progress) {
    std::vector<Scored> all;
    for (std::size_t k = 0; k < candidates.size(); ++k) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(k) / static_cast<double>(candidates.size()));
        const geo::WaterPoint place = placeOf(candidates[k]);
        const bool isAllowed = candidates[k].candidate.isPinned
                                   ? input.ground.depthAt(place).has_value()
                                   : input.ground.isFishable(place);
        if (!isAllowed) {
            continue;
        }
        Scored one{std::move(candidates[k]), surroundingsOf(input, place, plan.tackle.cast), {}};
        one.judgement =
            judgementOf(input, one.around, place, plan, wavesOf(one.worked),
                        one.worked.candidate.isPinned ? ChosenBy::user : ChosenBy::program);
        all.push_back(std::move(one));
    }
    std::ranges::sort(all, isBetter);
    return all;
}

ChoiceRules rulesOf(const Plan& plan, const RankSettings& settings) {
    ChoiceRules rules;
    rules.count = static_cast<std::size_t>(plan.count);
    rules.apart_m = settings.leastApart * plan.tackle.cast.inMetres();
    rules.mostInSection = settings.mostInSection > 0
                              ? static_cast<std::size_t>(settings.mostInSection)
                              : std::max(leastCap, (rules.count + 2) / 3);
    return rules;
}

/// A candidate that was chosen, and whether only in order to learn.
struct Chosen {
    std::size_t position = 0;
    bool toLearn = false;
};

std::vector<Chosen> chosenToLearn(const std::vector<Scored>& all,
                                  const std::vector<Eligible>& eligible, const ChoiceRules& rules,
                                  const LearnedCatch& learned, const Plan& plan) {
    std::vector<Lesson> lessons;
    for (const Scored& one : all) {
        const double width = one.judgement.expected->relativeWidth();
        lessons.push_back({*one.judgement.expected, one.judgement.features,
                           width > 0.0 ? one.judgement.toFindOut / width : 0.0});
    }
    const auto chosenWith = [&](double eagerness) {
        return chooseToLearn(eligible, lessons, learned.model, rules,
                             {eagerness, learned.rodHoursOfStay});
    };
    const auto known = chosenWith(0.0);
    auto taken = chosenWith(eagernessToTry(plan.tryNew, plan.weights));
    std::ranges::sort(taken);
    std::vector<Chosen> chosen;
    for (const std::size_t k : taken) {
        chosen.push_back({k, std::ranges::find(known, k) == known.end()});
    }
    return chosen;
}

std::vector<Chosen> chosenOf(const MarkInput& input, const std::vector<Scored>& all,
                             const Plan& plan, const RankSettings& settings) {
    std::vector<Eligible> eligible;
    for (const Scored& one : all) {
        const geo::WaterPoint place = placeOf(one.worked);
        eligible.push_back({place, one.judgement.worth(0.0), sectionAt(input, place),
                            one.worked.candidate.isPinned});
    }
    const ChoiceRules rules = rulesOf(plan, settings);
    if (all.front().judgement.expected) {
        return chosenToLearn(all, eligible, rules, *input.learned, plan);
    }
    auto positions = eligible.size() <= static_cast<std::size_t>(settings.exactUpTo)
                         ? chooseExactly(eligible, rules)
                         : chooseGreedily(eligible, rules);
    std::vector<Chosen> chosen;
    for (const std::size_t k : filledUp(std::move(positions), eligible, rules)) {
        chosen.push_back({k, false});
    }
    return chosen;
}

std::vector<Caution> cautionsFor(const MarkInput& input, const Plan& plan, const Scored& one) {
    std::vector<Caution> out;
    const geo::WaterPoint place = placeOf(one.worked);
    if (input.ground.isClosed(place)) {
        out.emplace_back(InClosedWater{});
    } else if (!input.ground.isFishable(place)) {
        out.emplace_back(DeeperThanLimit{});
    }
    if (const std::string* ban = input.bannedAt ? input.bannedAt(place) : nullptr) {
        out.emplace_back(InBannedWater{*ban});
    }
    if (one.around.isClosedNear && !input.ground.isClosed(place)) {
        out.emplace_back(ClosedWaterNear{});
    }
    const bool isGuess =
        input.isGuess != nullptr && (*input.isGuess)[input.isGuess->frame().cellOf(place)] != 0;
    if (isGuess) {
        out.emplace_back(GuessedHere{});
    } else if (one.around.guessShare > mostlyGuess) {
        out.emplace_back(GuessedAround{});
    }
    const auto& waves = one.worked.waves;
    const auto lying =
        lyingCautions(waves ? std::optional(waves->height) : std::nullopt,
                      static_cast<int>(one.worked.spread.rods.size()), plan.tackle.rods);
    out.insert(out.end(), lying.begin(), lying.end());
    return out;
}

std::optional<ExpectedCatch> expectedOf(const Judgement& judgement) {
    if (!judgement.expected) {
        return std::nullopt;
    }
    const auto [low, high] = judgement.expected->interval80();
    return ExpectedCatch{10.0 * judgement.expected->rate(), 10.0 * low, 10.0 * high};
}

Mark markOf(const MarkInput& input, const Plan& plan, Scored one, int rank) {
    Mark mark;
    mark.rank = rank;
    mark.isPinned = one.worked.candidate.isPinned;
    if (mark.isPinned) {
        mark.pinnedAt = one.worked.candidate.place;
    }
    mark.name = one.worked.candidate.name;
    mark.place = placeOf(one.worked);
    mark.lonLat = input.frame.toEarth(mark.place);
    mark.depth = one.around.depth;
    const float trust_m = input.trust_m[input.trust_m.frame().cellOf(mark.place)];
    mark.trust = std::isnan(trust_m) ? units::Depth::fromLength(one.around.trust)
                                     : units::Depth::metres(static_cast<double>(trust_m));
    mark.section = sectionAt(input, mark.place);
    if (mark.section != sections::noSection) {
        mark.sectionName = input.sections.sections[static_cast<std::size_t>(mark.section)].name;
    }
    mark.cautions = cautionsFor(input, plan, one);
    mark.zones = std::move(one.around.kinds);
    mark.score = one.judgement.score;
    mark.expected = expectedOf(one.judgement);
    mark.factors = std::move(one.judgement.factors);
    if (const auto& waves = one.worked.waves) {
        mark.fetch = waves->fetch;
        mark.waveHeight = waves->height;
    }
    mark.anchors = std::move(one.worked.anchors);
    mark.later = std::move(one.worked.later);
    mark.spread = std::move(one.worked.spread);
    return mark;
}

} // namespace

std::vector<Caution> lyingCautions(const std::optional<units::Length>& waveHeight, int rods,
                                   int wanted) {
    std::vector<Caution> out;
    if (waveHeight && waveHeight->inMetres() >= highWave_m) {
        out.emplace_back(WavesHere{*waveHeight});
    }
    if (rods < wanted) {
        out.emplace_back(RoomForRods{rods, wanted});
    }
    return out;
}

std::vector<std::string> problemsIn(const RankSettings& settings, const Plan& plan) {
    std::vector<std::string> problems;
    if (!(settings.leastApart >= 0.0 && settings.leastApart <= 20.0)) {
        problems.emplace_back("marks from 0 to 20 casts apart");
    }
    if (settings.mostInSection < 0) {
        problems.emplace_back("0 or more marks in a section");
    }
    if (settings.exactUpTo < 0 || settings.exactUpTo > 24) {
        problems.emplace_back("an exact list of up to 24 candidates");
    }
    if (plan.count < 1 || plan.count > 40) {
        problems.emplace_back("from 1 to 40 marks");
    }
    if (!(plan.tackle.cast.inMetres() >= 5.0 && plan.tackle.cast.inMetres() <= 100.0)) {
        problems.emplace_back("a cast from 5 to 100 m");
    }
    return problems;
}

base::Result<std::vector<Mark>> rankMarks(const MarkInput& input, const Plan& plan,
                                          std::vector<WorkedCandidate> candidates,
                                          const RankSettings& settings, base::Progress& progress,
                                          const RodsFor& rodsFor) {
    if (const auto problems = problemsIn(settings, plan); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "marks cannot be ranked so", "plan",
                          "choose " + problems.front());
    }
    auto all = scored(input, plan, std::move(candidates), progress);
    if (!all) {
        return std::unexpected(all.error());
    }
    if (all->empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "no place is left that is open, on the water and within the limit",
                          "marks", "choose a deeper limit, or another wind");
    }
    std::vector<Mark> marks;
    for (const Chosen& chosen : chosenOf(input, *all, plan, settings)) {
        if (rodsFor) {
            const WorkedCandidate& worked = (*all)[chosen.position].worked;
            auto spread = rodsFor(worked.candidate.place, worked.anchors);
            if (!spread) {
                return std::unexpected(spread.error());
            }
            (*all)[chosen.position].worked.spread = std::move(*spread);
        }
        marks.push_back(markOf(input, plan, std::move((*all)[chosen.position]),
                               static_cast<int>(marks.size()) + 1));
        marks.back().toLearn = chosen.toLearn;
    }
    return marks;
}

} // namespace marks
