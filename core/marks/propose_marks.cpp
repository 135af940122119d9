// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_marks.h"

#include "core/marks/apart.h"
#include "core/marks/beliefs.h"
#include "core/marks/places_to_look_at.h"
#include "core/marks/winds_of_day.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace marks {

namespace {

constexpr std::size_t cellsBetweenAsking = 64;
/// Half of the candidates are first spread this many casts apart, so that no stretch of the water
/// goes unheard.
constexpr double wideApart = 2.0;

/// Best first; of equal promise from the middle of the water outwards, then from north to south
/// and west to east.
void sortByPromise(std::vector<Candidate>& candidates, geo::WaterPoint middle) {
    std::ranges::sort(candidates, [middle](const Candidate& a, const Candidate& b) {
        if (a.promise != b.promise) {
            return a.promise > b.promise;
        }
        const double a_m = geo::distance_m(a.place, middle);
        const double b_m = geo::distance_m(b.place, middle);
        if (a_m != b_m) {
            return a_m < b_m;
        }
        return a.place.y_m != b.place.y_m ? a.place.y_m > b.place.y_m : a.place.x_m < b.place.x_m;
    });
}

/// Takes candidates in order that keep `apart_m` from all taken, until `most` are taken.
void thin(const std::vector<Candidate>& sorted, double apart_m, std::size_t most,
          std::vector<Candidate>& taken) {
    Apart apart(apart_m);
    for (const Candidate& candidate : taken) {
        apart.take(candidate.place);
    }
    for (const Candidate& candidate : sorted) {
        if (taken.size() >= most) {
            return;
        }
        if (apart.isClear(candidate.place)) {
            apart.take(candidate.place);
            taken.push_back(candidate);
        }
    }
}

std::vector<Candidate> promising(const MarkInput& input, const Plan& plan,
                                 const std::vector<LookedAt>& lookedAt,
                                 const std::vector<Prospect>& prospects) {
    const learning::CatchModel* model = input.learned != nullptr ? &input.learned->model : nullptr;
    const double eagerness = eagernessToTry(plan.tryNew, plan.weights);
    std::vector<Candidate> candidates(lookedAt.size());
    for (std::size_t k = 0; k < lookedAt.size(); ++k) {
        candidates[k].place = lookedAt[k].place;
        candidates[k].promise = prospects[k].worth(model, plan.weights, eagerness);
    }
    return candidates;
}

std::vector<Candidate> ownOnes(const MarkInput& input, const Plan& plan,
                               const std::vector<Candidate>& pinned) {
    std::vector<LookedAt> lookedAt;
    std::vector<Prospect> prospects;
    std::vector<Candidate> own;
    for (const Candidate& candidate : pinned) {
        if (input.ground.depthAt(candidate.place)) {
            lookedAt.push_back(
                {candidate.place, surroundingsOf(input, candidate.place, plan.tackle.cast)});
            prospects.emplace_back(input, lookedAt.back(), plan);
            own.push_back(candidate);
            own.back().isPinned = true;
        }
    }
    const auto promised = promising(input, plan, lookedAt, prospects);
    for (std::size_t k = 0; k < own.size(); ++k) {
        own[k].promise = promised[k].promise;
    }
    return own;
}

base::Result<void> check(const ProposeSettings& settings, const Plan& plan) {
    if (const auto problems = problemsIn(settings, plan); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "marks cannot be proposed so", "plan",
                          "choose " + problems.front());
    }
    return {};
}

/// Why there is no place at all.
base::Result<std::vector<Candidate>> nowhere(const MarkInput& input, const Plan& plan,
                                             const ProposeSettings& settings) {
    const auto excluded = excludedAreas(input, plan, settings);
    const auto areaOf = [&](Exclusion why) { return excluded[static_cast<std::size_t>(why)]; };
    if (areaOf(Exclusion::banned) > units::Area()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "wherever the boat could lie you have banned the water", "marks",
                          "lift a ban");
    }
    if (areaOf(Exclusion::tooRough) > units::Area()) {
        return base::fail(
            base::ErrorKind::unusableInput,
            fmt::format("wherever the boat could lie the waves are higher than {:.2f} "
                        "m, too rough for an open boat at anchor",
                        settings.roughest.inMetres()),
            "marks", "stay ashore in this wind, or plan for another");
    }
    return base::fail(base::ErrorKind::unusableInput,
                      "there is no open water, deep enough to float and within the limit, "
                      "with room to swing",
                      "marks", "choose a deeper limit, or draw more of the water");
}

bool isWithin(double value, double low, double high) {
    return value >= low && value <= high;
}

} // namespace

std::vector<std::string> problemsIn(const ProposeSettings& settings, const Plan& plan) {
    std::vector<std::string> problems;
    const auto ask = [&problems](bool isFine, const char* sentence) {
        if (!isFine) {
            problems.emplace_back(sentence);
        }
    };
    ask(isWithin(plan.count, 1, 40), "from 1 to 40 marks");
    ask(isWithin(plan.tackle.cast.inMetres(), 5.0, 100.0), "a cast from 5 to 100 m");
    ask(isWithin(plan.tackle.boatLength.inMetres(), 2.0, 15.0), "a boat from 2 to 15 m long");
    for (const WindOfHours& part : windsOf(plan.day)) {
        ask(isWithin(part.wind.speed.value_or(units::Speed()).inMetresPerSecond(), 0.0, 60.0),
            "a wind from 0 to 60 m/s");
    }
    ask(isWithin(settings.most, 1, 5000), "from 1 to 5000 candidates");
    ask(isWithin(settings.mostLookedAt, 100, 1'000'000), "from 100 to 1 million places looked at");
    ask(isWithin(settings.leastApart, 0.1, 4.0), "candidates from 0.1 to 4 casts apart");
    ask(isWithin(settings.shallowest.inMetres(), 0.3, 5.0), "a least depth from 0.3 to 5 m");
    ask(isWithin(settings.swingRoom, 0.0, 5.0), "room from 0 to 5 boat lengths");
    ask(isWithin(settings.roughest.inMetres(), 0.05, 5.0), "roughest waves from 0.05 to 5 m");
    ask(isWithin(plan.tryNew, 0.0, 1.0), "from 0, what is known, to 1, new water");
    return problems;
}

bool mayLieAt(const MarkInput& input, geo::WaterPoint place, const Plan& plan,
              const ProposeSettings& settings) {
    return input.ground.depthAt(place) && !exclusionAt(input, place, plan, settings);
}

base::Result<std::vector<LookedAt>> lookRound(const MarkInput& input, const Plan& plan,
                                              const ProposeSettings& settings,
                                              base::Progress& progress) {
    if (auto checked = check(settings, plan); !checked) {
        return std::unexpected(checked.error());
    }
    const auto places = placesToLookAt(input, plan.tackle.cast.inMetres(),
                                       static_cast<std::size_t>(settings.mostLookedAt));
    std::vector<LookedAt> lookedAt;
    for (std::size_t k = 0; k < places.size(); ++k) {
        if (k % cellsBetweenAsking == 0) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            progress.tell(static_cast<double>(k) / static_cast<double>(places.size()));
        }
        if (mayLieAt(input, places[k], plan, settings)) {
            lookedAt.push_back({places[k], surroundingsOf(input, places[k], plan.tackle.cast)});
        }
    }
    return lookedAt;
}

base::Result<std::vector<Prospect>> prospectsOf(const MarkInput& input, const Plan& plan,
                                                const std::vector<LookedAt>& lookedAt,
                                                base::Progress& progress) {
    std::vector<Prospect> prospects;
    prospects.reserve(lookedAt.size());
    for (const LookedAt& at : lookedAt) {
        if (prospects.size() % cellsBetweenAsking == 0 && progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        prospects.emplace_back(input, at, plan);
    }
    return prospects;
}

base::Result<std::vector<Candidate>>
proposeMarks(const MarkInput& input, const Plan& plan, const std::vector<LookedAt>& lookedAt,
             const std::vector<Prospect>& prospects, const std::vector<Candidate>& pinned,
             const ProposeSettings& settings, base::Progress& progress) {
    if (auto checked = check(settings, plan); !checked) {
        return std::unexpected(checked.error());
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    std::vector<Candidate> found = promising(input, plan, lookedAt, prospects);
    std::vector<Candidate> taken = ownOnes(input, plan, pinned);
    if (found.empty() && taken.empty()) {
        return nowhere(input, plan, settings);
    }
    const geo::Box box = input.outline.box();
    const geo::WaterPoint middle{0.5 * (box.west_m + box.east_m),
                                 0.5 * (box.south_m + box.north_m)};
    sortByPromise(found, middle);
    const auto most = static_cast<std::size_t>(settings.most);
    const std::size_t pins = taken.size();
    const double cast_m = plan.tackle.cast.inMetres();
    thin(found, std::max(wideApart, settings.leastApart) * cast_m, pins + (most + 1) / 2, taken);
    thin(found, settings.leastApart * cast_m, pins + most, taken);
    std::vector<Candidate> free(taken.begin() + static_cast<std::ptrdiff_t>(pins), taken.end());
    taken.resize(pins);
    sortByPromise(free, middle);
    taken.insert(taken.end(), free.begin(), free.end());
    return taken;
}

base::Result<std::vector<Candidate>> proposeMarks(const MarkInput& input, const Plan& plan,
                                                  const std::vector<Candidate>& pinned,
                                                  const ProposeSettings& settings,
                                                  base::Progress& progress) {
    const auto lookedAt = lookRound(input, plan, settings, progress);
    if (!lookedAt) {
        return std::unexpected(lookedAt.error());
    }
    const auto prospects = prospectsOf(input, plan, *lookedAt, progress);
    if (!prospects) {
        return std::unexpected(prospects.error());
    }
    return proposeMarks(input, plan, *lookedAt, *prospects, pinned, settings, progress);
}

} // namespace marks
