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

/// Candidates in order, each asked once whether the boat holds there.
class Thinning {
public:
    Thinning(const std::vector<Candidate>& sorted, const Holds& holds, int mostInVain,
             std::vector<Candidate> taken)
        : sorted_(sorted), holds_(holds), leftInVain_(mostInVain), taken_(std::move(taken)),
          holdsAt_(sorted.size()) {}

    /// Takes those that keep `apart_m` from all taken, and `fromRefused_m` from all where the boat
    /// does not hold, until there are `most`.
    base::Result<void> take(double apart_m, double fromRefused_m, std::size_t most,
                            base::Progress& progress) {
        Apart apart(apart_m);
        for (const Candidate& candidate : taken_) {
            apart.take(candidate.place);
        }
        Apart refused(fromRefused_m);
        for (std::size_t k = 0; k < sorted_.size() && taken_.size() < most; ++k) {
            const geo::WaterPoint place = sorted_[k].place;
            if (!apart.isClear(place) || !refused.isClear(place)) {
                continue;
            }
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            const auto fine = holdsAt(k);
            if (!fine) {
                return std::unexpected(fine.error());
            }
            if (*fine) {
                apart.take(place);
                taken_.push_back(sorted_[k]);
            } else if (leftInVain_ <= 0) {
                return {};
            } else {
                refused.take(place);
            }
        }
        return {};
    }

    [[nodiscard]] std::vector<Candidate>& taken() { return taken_; }

private:
    base::Result<bool> holdsAt(std::size_t k) {
        if (!holds_) {
            return true;
        }
        if (!holdsAt_[k]) {
            const auto asked = holds_(sorted_[k]);
            if (!asked) {
                return asked;
            }
            holdsAt_[k] = *asked;
            leftInVain_ -= *asked ? 0 : 1;
        }
        return *holdsAt_[k];
    }

    const std::vector<Candidate>& sorted_;
    const Holds& holds_;
    int leftInVain_;
    std::vector<Candidate> taken_;
    std::vector<std::optional<bool>> holdsAt_;
};

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

/// What is to be done about what takes most of the water.
const char* wayOut(Exclusion why) {
    switch (why) {
    case Exclusion::closed:
        return "choose water that is open";
    case Exclusion::tooShallow:
        return "wait for more water, or draw more of it";
    case Exclusion::tooDeep:
        return "choose a deeper limit";
    case Exclusion::noRoom:
        return "take a shorter boat, or draw more of the water";
    case Exclusion::ropesTooShort:
        return "take longer ropes, or a smaller scope";
    case Exclusion::tooRough:
        return "stay ashore in this wind, or plan for another";
    case Exclusion::banned:
        return "lift a ban";
    case Exclusion::tooSteep:
    case Exclusion::noAnchors:
        break;
    }
    return "draw more of the water";
}

/// "3.2 ha closed, 0.4 ha too_deep": the largest first, with their names in reports.
std::string areasText(const ExcludedAreas& areas) {
    std::vector<Exclusion> order(allExclusions.begin(), allExclusions.end());
    std::ranges::stable_sort(order, std::ranges::greater(), [&](Exclusion why) {
        return areas[static_cast<std::size_t>(why)].inSquareMetres();
    });
    std::string text;
    for (const Exclusion why : order) {
        const double ha = areas[static_cast<std::size_t>(why)].inHectares();
        if (ha > 0.0) {
            std::string name(nameOf(why));
            std::ranges::replace(name, '_', ' ');
            text += fmt::format("{}{:.2f} ha {}", text.empty() ? "" : ", ", ha, name);
        }
    }
    return text;
}

/// Why there is no place at all.
base::Result<std::vector<Candidate>> nowhere(const MarkInput& input, const Plan& plan,
                                             const ProposeSettings& settings,
                                             base::Progress& progress) {
    const auto lying = LyingCells::of(input, plan, settings, progress);
    if (!lying) {
        return std::unexpected(lying.error());
    }
    const ExcludedAreas areas = lying->excludedAreas();
    const auto areaOf = [&](Exclusion why) { return areas[static_cast<std::size_t>(why)]; };
    const std::string leftOut = areasText(areas);
    const auto fail = [&](std::string what, const char* whatToDo) {
        return base::fail(base::ErrorKind::unusableInput,
                          leftOut.empty() ? what : what + ": " + leftOut, "marks", whatToDo);
    };
    if (areaOf(Exclusion::banned) > units::Area()) {
        return fail("wherever the boat could lie you have banned the water",
                    wayOut(Exclusion::banned));
    }
    if (areaOf(Exclusion::tooRough) > units::Area()) {
        return fail(fmt::format("wherever the boat could lie the waves are higher than {:.2f} "
                                "m, too rough for an open boat at anchor",
                                settings.roughest.inMetres()),
                    wayOut(Exclusion::tooRough));
    }
    const auto most = std::ranges::max_element(areas) - areas.begin();
    return fail("there is no open water, deep enough to float and within the limit, with room to "
                "swing and within reach of the ropes",
                wayOut(allExclusions[static_cast<std::size_t>(most)]));
}

} // namespace

base::Result<std::vector<LookedAt>> lookRound(const MarkInput& input, const Plan& plan,
                                              const ProposeSettings& settings,
                                              const LyingCells& lying, base::Progress& progress) {
    if (auto checked = checkSettings(settings, plan); !checked) {
        return std::unexpected(checked.error());
    }
    const auto mayLie = [&](geo::WaterPoint p) {
        return mayLieAt(input, p, plan, settings, &lying.clearance());
    };
    const auto places = placesToLookAt(input, {lying, mayLie}, plan.tackle.cast.inMetres(),
                                       static_cast<std::size_t>(settings.mostLookedAt));
    std::vector<LookedAt> lookedAt;
    for (std::size_t k = 0; k < places.size(); ++k) {
        if (k % cellsBetweenAsking == 0) {
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
            progress.tell(static_cast<double>(k) / static_cast<double>(places.size()));
        }
        lookedAt.push_back({places[k], surroundingsOf(input, places[k], plan.tackle.cast)});
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
             const ProposeSettings& settings, base::Progress& progress, const Holds& holds) {
    if (auto checked = checkSettings(settings, plan); !checked) {
        return std::unexpected(checked.error());
    }
    if (progress.stopAsked()) {
        return std::unexpected(base::cancelled());
    }
    std::vector<Candidate> found = promising(input, plan, lookedAt, prospects);
    std::vector<Candidate> own = ownOnes(input, plan, pinned);
    if (found.empty() && own.empty()) {
        return nowhere(input, plan, settings, progress);
    }
    const geo::Box box = input.outline.box();
    const geo::WaterPoint middle{0.5 * (box.west_m + box.east_m),
                                 0.5 * (box.south_m + box.north_m)};
    sortByPromise(found, middle);
    const auto most = static_cast<std::size_t>(settings.most);
    const std::size_t pins = own.size();
    const double cast_m = plan.tackle.cast.inMetres();
    Thinning thinning(found, holds, settings.mostInVain, std::move(own));
    const double close_m = settings.leastApart * cast_m;
    const double wide_m = std::max(wideApart * cast_m, close_m);
    // Where many places in a row do not hold, the search goes on elsewhere before it comes back.
    struct Pass {
        double apart_m;
        double fromRefused_m;
        std::size_t most;
    };
    for (const Pass& pass :
         {Pass{wide_m, wide_m, pins + (most + 1) / 2}, Pass{close_m, close_m, pins + most},
          Pass{close_m, 0.0, pins + most}}) {
        if (auto done = thinning.take(pass.apart_m, pass.fromRefused_m, pass.most, progress);
            !done) {
            return std::unexpected(done.error());
        }
    }
    std::vector<Candidate>& taken = thinning.taken();
    std::vector<Candidate> free(taken.begin() + static_cast<std::ptrdiff_t>(pins), taken.end());
    taken.resize(pins);
    sortByPromise(free, middle);
    taken.insert(taken.end(), free.begin(), free.end());
    return std::move(taken);
}

base::Result<std::vector<Candidate>> proposeMarks(const MarkInput& input, const Plan& plan,
                                                  const std::vector<Candidate>& pinned,
                                                  const ProposeSettings& settings,
                                                  base::Progress& progress, const Holds& holds) {
    const auto lying = LyingCells::of(input, plan, settings, progress);
    if (!lying) {
        return std::unexpected(lying.error());
    }
    const auto lookedAt = lookRound(input, plan, settings, *lying, progress);
    if (!lookedAt) {
        return std::unexpected(lookedAt.error());
    }
    const auto prospects = prospectsOf(input, plan, *lookedAt, progress);
    if (!prospects) {
        return std::unexpected(prospects.error());
    }
    return proposeMarks(input, plan, *lookedAt, *prospects, pinned, settings, progress, holds);
}

} // namespace marks
