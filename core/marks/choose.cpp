// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/choose.h"

#include <algorithm>

namespace marks {

bool fits(const std::vector<Eligible>& all, const std::vector<std::size_t>& chosen,
          std::size_t next, const ChoiceRules& rules) {
    if (chosen.size() >= rules.count) {
        return false;
    }
    std::size_t inSection = 0;
    for (const std::size_t k : chosen) {
        if (geo::distance_m(all[k].place, all[next].place) < rules.apart_m) {
            return false;
        }
        inSection += all[k].section == all[next].section ? 1U : 0U;
    }
    return all[next].section == sections::noSection || inSection < rules.mostInSection;
}

namespace {

std::vector<std::size_t> pinnedOf(const std::vector<Eligible>& all) {
    std::vector<std::size_t> pinned;
    for (std::size_t k = 0; k < all.size(); ++k) {
        if (all[k].isPinned) {
            pinned.push_back(k);
        }
    }
    return pinned;
}

void takeGreedily(const std::vector<Eligible>& all, const ChoiceRules& rules,
                  std::vector<std::size_t>& chosen) {
    for (std::size_t k = 0; k < all.size(); ++k) {
        if (std::ranges::find(chosen, k) == chosen.end() && fits(all, chosen, k, rules)) {
            chosen.push_back(k);
        }
    }
}

/// Goes through take and leave for each in order, and gives up where even the best that is left
/// cannot better the best list known.
class Search {
public:
    Search(const std::vector<Eligible>& all, const ChoiceRules& rules) : all_(all), rules_(rules) {
        best_ = chooseGreedily(all, rules);
        bestSum_ = sumOf(best_);
    }

    std::vector<std::size_t> run() {
        std::vector<std::size_t> chosen = pinnedOf(all_);
        step(chosen, sumOf(chosen), 0);
        return best_;
    }

private:
    [[nodiscard]] double sumOf(const std::vector<std::size_t>& chosen) const {
        double sum = 0.0;
        for (const std::size_t k : chosen) {
            sum += all_[k].score;
        }
        return sum;
    }

    [[nodiscard]] double boundOf(const std::vector<std::size_t>& chosen, double sum,
                                 std::size_t next) const {
        std::size_t room = rules_.count > chosen.size() ? rules_.count - chosen.size() : 0;
        for (std::size_t k = next; k < all_.size() && room > 0; ++k) {
            if (!all_[k].isPinned) {
                sum += all_[k].score;
                --room;
            }
        }
        return sum;
    }

    void step(std::vector<std::size_t>& chosen, double sum, std::size_t next) {
        constexpr double slack = 1e-12;
        if (sum > bestSum_ + slack) {
            bestSum_ = sum;
            best_ = chosen;
        }
        if (next >= all_.size() || boundOf(chosen, sum, next) <= bestSum_ + slack) {
            return;
        }
        if (!all_[next].isPinned && fits(all_, chosen, next, rules_)) {
            chosen.push_back(next);
            step(chosen, sum + all_[next].score, next + 1);
            chosen.pop_back();
        }
        step(chosen, sum, next + 1);
    }

    const std::vector<Eligible>& all_;
    ChoiceRules rules_;
    std::vector<std::size_t> best_;
    double bestSum_ = 0.0;
};

} // namespace

std::vector<std::size_t> chooseGreedily(const std::vector<Eligible>& sorted,
                                        const ChoiceRules& rules) {
    std::vector<std::size_t> chosen = pinnedOf(sorted);
    takeGreedily(sorted, rules, chosen);
    std::ranges::sort(chosen);
    return chosen;
}

std::vector<std::size_t> chooseExactly(const std::vector<Eligible>& sorted,
                                       const ChoiceRules& rules) {
    std::vector<std::size_t> chosen = Search(sorted, rules).run();
    std::ranges::sort(chosen);
    return chosen;
}

std::vector<std::size_t> filledUp(std::vector<std::size_t> chosen,
                                  const std::vector<Eligible>& sorted, const ChoiceRules& rules) {
    ChoiceRules uncapped = rules;
    uncapped.mostInSection = sorted.size();
    takeGreedily(sorted, uncapped, chosen);
    std::ranges::sort(chosen);
    return chosen;
}

} // namespace marks
