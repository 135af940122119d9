// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/match_waters.h"

#include <deque>
#include <limits>

namespace sections {

namespace {

constexpr double never = -std::numeric_limits<double>::infinity();
constexpr double sameWorth = 1e-6; ///< Less is rounding.

/// Takes the new waters in one after the other. After each the pairs are the best for those that
/// are in: then a longest alternating path from the next one makes them the best with it.
class Matching {
public:
    Matching(std::span<const SharedWater> shared, int nowCount, int earlierCount)
        : sharedOf_(static_cast<std::size_t>(nowCount)),
          earlierOf_(static_cast<std::size_t>(nowCount)),
          ownerOf_(static_cast<std::size_t>(earlierCount), nobody) {
        for (const SharedWater& one : shared) {
            sharedOf_[static_cast<std::size_t>(one.now)].push_back(one);
        }
    }

    void takeIn(int first) {
        reach(first);
        const End end = bestEnd(first);
        int now = end.now;
        SharedWater with = end.with;
        // Back along the path: each passes on what it had.
        while (now != nobody) {
            const Way way = ways_[at(now)];
            earlierOf_[at(now)] = with;
            if (with.worth > 0.0) {
                ownerOf_[at(with.earlier)] = now;
            }
            with = way.lost;
            now = way.from;
        }
    }

    [[nodiscard]] std::vector<int> pairs() const {
        std::vector<int> earlier;
        for (const SharedWater& pair : earlierOf_) {
            earlier.push_back(pair.worth > 0.0 ? pair.earlier : nobody);
        }
        return earlier;
    }

private:
    static constexpr int nobody = -1;
    static std::size_t at(int position) { return static_cast<std::size_t>(position); }

    /// How a new water is reached: by taking from it what it had.
    struct Way {
        double gain = never;
        int from = nobody;
        SharedWater lost; ///< What `from` takes from it.
    };
    /// Where the path ends: with this one alone, or with an earlier water that nobody has.
    struct End {
        int now = nobody;
        SharedWater with;
    };

    void reach(int first) {
        ways_.assign(sharedOf_.size(), {});
        ways_[at(first)].gain = 0.0;
        reached_ = {first};
        std::deque<int> waiting{first};
        while (!waiting.empty()) {
            const int now = waiting.front();
            waiting.pop_front();
            for (const SharedWater& step : sharedOf_[at(now)]) {
                const int owner = ownerOf_[at(step.earlier)];
                if (owner == nobody || owner == now) {
                    continue;
                }
                const double gain = ways_[at(now)].gain + step.worth - earlierOf_[at(owner)].worth;
                Way& way = ways_[at(owner)];
                if (owner != first && gain > way.gain + sameWorth) {
                    reached_.push_back(owner);
                    way = {gain, now, step};
                    waiting.push_back(owner);
                }
            }
        }
    }

    [[nodiscard]] End bestEnd(int first) const {
        End best{first, {}};
        double most = sameWorth;
        for (const int now : reached_) {
            const double gain = ways_[at(now)].gain;
            if (gain > most) {
                most = gain;
                best = {now, {}};
            }
            for (const SharedWater& step : sharedOf_[at(now)]) {
                if (ownerOf_[at(step.earlier)] == nobody && gain + step.worth > most) {
                    most = gain + step.worth + sameWorth;
                    best = {now, step};
                }
            }
        }
        return best;
    }

    std::vector<std::vector<SharedWater>> sharedOf_;
    std::vector<SharedWater> earlierOf_; ///< What each new water has; of no worth: nothing.
    std::vector<int> ownerOf_;
    std::vector<Way> ways_;
    std::vector<int> reached_;
};

} // namespace

std::vector<int> matchWaters(std::span<const SharedWater> shared, int nowCount, int earlierCount) {
    Matching matching(shared, nowCount, earlierCount);
    for (int now = 0; now < nowCount; ++now) {
        matching.takeIn(now);
    }
    return matching.pairs();
}

} // namespace sections
