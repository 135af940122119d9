// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/turns.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace marks {

namespace {

constexpr double slack = 1e-12;
constexpr int mostRounds = 200;

} // namespace

Turns::Turns(const DayInput& input, const std::vector<std::size_t>& set)
    : input_(input), hourWeight_(set.size(), 1.0) {
    if (set.empty()) {
        return;
    }
    const auto n = static_cast<double>(set.size());
    const double turn_s = std::chrono::duration<double>(input.end - input.start).count() / n;
    stopWeight_.resize(input.stopWeight ? input.stops.size() : 0);
    for (std::size_t k = 0; k < set.size(); ++k) {
        const auto middle_ms = std::llround((static_cast<double>(k) + 0.5) * turn_s * 1000.0);
        const units::Moment middle = input.start + std::chrono::milliseconds(middle_ms);
        if (input.hourWeight) {
            hourWeight_[k] = input.hourWeight(middle);
        }
        for (std::size_t stop = 0; stop < stopWeight_.size(); ++stop) {
            stopWeight_[stop].push_back(input.stopWeight(stop, middle));
        }
    }
    double score = 0.0;
    for (const std::size_t stop : set) {
        score += input.stops[stop].score;
    }
    const double weight = std::accumulate(hourWeight_.begin(), hourWeight_.end(), 0.0);
    if (turn_s > 0.0) {
        pricePerMetre_ =
            (score / n) * (weight / n) / (turn_s * input.boatSpeed.inMetresPerSecond());
    }
}

double Turns::toFirst(std::size_t stop) const {
    return input_.fromLaunch_m.empty() ? 0.0 : pricePerMetre_ * input_.fromLaunch_m[stop];
}

double Turns::move(std::size_t from, std::size_t to) const {
    return pricePerMetre_ * input_.between_m[from][to];
}

double Turns::inTurn(std::size_t stop, std::size_t turn) const {
    const double ofStop = stopWeight_.empty() ? 1.0 : stopWeight_[stop][turn];
    return input_.stops[stop].score * hourWeight_[turn] * ofStop;
}

double Turns::worthOf(const std::vector<std::size_t>& order) const {
    if (order.empty()) {
        return 0.0;
    }
    double worth = -toFirst(order.front()) - toFirst(order.back());
    for (std::size_t k = 0; k < order.size(); ++k) {
        worth += inTurn(order[k], k);
        if (k > 0) {
            worth -= move(order[k - 1], order[k]);
        }
    }
    return worth;
}

std::vector<std::size_t> Turns::bestOrder(const std::vector<std::size_t>& set) const {
    const std::size_t n = set.size();
    const std::size_t subsets = std::size_t{1} << n;
    // best[s * n + last]: greatest worth of visiting the subset s, ending on `last`.
    std::vector<double> best(subsets * n, -INFINITY);
    std::vector<std::size_t> before(subsets * n, n);
    for (std::size_t last = 0; last < n; ++last) {
        best[(std::size_t{1} << last) * n + last] = inTurn(set[last], 0) - toFirst(set[last]);
    }
    for (std::size_t s = 1; s < subsets; ++s) {
        const auto turn = static_cast<std::size_t>(__builtin_popcountll(s));
        for (std::size_t last = 0; last < n; ++last) {
            const double here = best[s * n + last];
            for (std::size_t next = 0; std::isfinite(here) && next < n; ++next) {
                if ((s >> next & 1U) != 0) {
                    continue;
                }
                const std::size_t state = (s | std::size_t{1} << next) * n + next;
                const double worth = here + inTurn(set[next], turn) - move(set[last], set[next]);
                if (worth > best[state]) {
                    best[state] = worth;
                    before[state] = last;
                }
            }
        }
    }
    std::size_t last = 0;
    double greatest = -INFINITY;
    for (std::size_t k = 0; k < n; ++k) {
        const double worth = best[(subsets - 1) * n + k] - toFirst(set[k]);
        if (worth > greatest) {
            greatest = worth;
            last = k;
        }
    }
    std::vector<std::size_t> order;
    for (std::size_t s = subsets - 1; order.size() < n;) {
        order.push_back(set[last]);
        const std::size_t previous = before[s * n + last];
        s &= ~(std::size_t{1} << last);
        last = previous;
    }
    std::ranges::reverse(order);
    return order;
}

std::vector<std::size_t> Turns::nearestNext(std::vector<std::size_t> set) const {
    std::vector<std::size_t> order;
    while (!set.empty()) {
        const auto next = std::ranges::min_element(set, {}, [&](std::size_t stop) {
            return order.empty() ? toFirst(stop) : move(order.back(), stop);
        });
        order.push_back(*next);
        set.erase(next);
    }
    return order;
}

std::vector<std::size_t> Turns::improved(std::vector<std::size_t> order) const {
    double worth = worthOf(order);
    bool better = true;
    const auto keepIfBetter = [&](std::vector<std::size_t>&& tried) {
        const double triedWorth = worthOf(tried);
        if (triedWorth > worth + slack) {
            worth = triedWorth;
            order = std::move(tried);
            better = true;
        }
    };
    for (int round = 0; better && round < mostRounds; ++round) {
        better = false;
        for (std::size_t a = 0; a < order.size(); ++a) {
            for (std::size_t b = 0; b < order.size(); ++b) {
                const auto at = [](std::size_t k) { return static_cast<std::ptrdiff_t>(k); };
                if (a < b) {
                    auto turned = order;
                    std::reverse(turned.begin() + at(a), turned.begin() + at(b) + 1);
                    keepIfBetter(std::move(turned));
                }
                if (a != b) {
                    auto shifted = order;
                    const std::size_t stop = shifted[a];
                    shifted.erase(shifted.begin() + at(a));
                    shifted.insert(shifted.begin() + at(b), stop);
                    keepIfBetter(std::move(shifted));
                }
            }
        }
    }
    return order;
}

std::vector<std::size_t> Turns::goodOrder(const std::vector<std::size_t>& set) const {
    const std::vector<std::size_t> asGiven = improved(set);
    const std::vector<std::size_t> byNearest = improved(nearestNext(set));
    return worthOf(byNearest) > worthOf(asGiven) + slack ? byNearest : asGiven;
}

} // namespace marks
