// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/survey_day.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

/// Puts faults into a day's fixes, never two within thirty fixes of each other.
class FaultMaker {
public:
    FaultMaker(std::vector<Fix>& fixes, const DayFacts& facts, Chance& chance)
        : fixes_(&fixes), facts_(&facts), chance_(&chance) {}

    void spikes(int count) {
        for (int n = 0; n < count; ++n) {
            const std::size_t at = freePlace(1, [](const Fix& fix) { return fix.depth_m > 1.5; });
            Fix& fix = mark(at, Fault::spike);
            const bool deeper = chance_->happens(0.6);
            const double move_m =
                deeper ? chance_->between(2.5, 9.0) : -chance_->between(0.55, 0.85) * fix.depth_m;
            fix.shown = std::max(0.1, fix.shown.value_or(0.0) + move_m / facts_->unit_m);
            ++event_;
        }
    }

    void dropOuts(int count, Fault fault) {
        for (int n = 0; n < count; ++n) {
            const auto length = static_cast<std::size_t>(chance_->whole(2, 14));
            const std::size_t from = freePlace(length, [](const Fix&) { return true; });
            for (std::size_t i = from; i < from + length; ++i) {
                mark(i, fault).shown =
                    fault == Fault::zeroDepth ? std::optional<double>(0.0) : std::nullopt;
            }
            ++event_;
        }
    }

    void stuck(int count) {
        for (int n = 0; n < count; ++n) {
            const auto length =
                static_cast<std::size_t>(chance_->whole(45, 70) / facts_->everySeconds);
            std::size_t from = 0;
            do {
                from = freePlace(length, [](const Fix&) { return true; });
            } while (std::abs((*fixes_)[from].depth_m - (*fixes_)[from + length - 1].depth_m) <
                     2.5);
            const std::optional<double> held = (*fixes_)[from].shown;
            for (std::size_t i = from + 1; i < from + length; ++i) {
                mark(i, Fault::stuck).shown = held;
            }
            ++event_;
        }
    }

    void positionJumps(int count) {
        for (int n = 0; n < count; ++n) {
            const auto length = static_cast<std::size_t>(chance_->whole(5, 11));
            const std::size_t from = freePlace(length, [](const Fix&) { return true; });
            const double turn = chance_->between(0.0, 2.0 * std::numbers::pi);
            const double far_m = chance_->between(110.0, 260.0);
            for (std::size_t i = from; i < from + length; ++i) {
                Fix& fix = mark(i, Fault::positionJump);
                fix.shownAt = fix.shownAt + Point{far_m * std::sin(turn), far_m * std::cos(turn)};
            }
            ++event_;
        }
    }

    void doubleEchoes(int count) {
        for (int n = 0; n < count; ++n) {
            const auto length = static_cast<std::size_t>(chance_->whole(4, 12));
            const std::size_t from = freePlace(
                length, [](const Fix& fix) { return fix.depth_m > 1.8 && fix.depth_m < 7.0; });
            for (std::size_t i = from; i < from + length; ++i) {
                Fix& fix = mark(i, Fault::doubleEcho);
                fix.shown = 2.0 * fix.shown.value_or(0.0);
            }
            ++event_;
        }
    }

    void lines(int count, Fault fault) {
        for (int n = 0; n < count; ++n) {
            mark(freePlace(1, [](const Fix&) { return true; }), fault);
            ++event_;
        }
    }

private:
    Fix& mark(std::size_t at, Fault fault) {
        Fix& fix = (*fixes_)[at];
        fix.fault = fault;
        fix.event = event_;
        return fix;
    }

    template <typename Fits>
    std::size_t freePlace(std::size_t length, Fits fits) {
        constexpr std::size_t apart = 30;
        for (;;) {
            const auto last = static_cast<double>(fixes_->size() - length - 2 * apart);
            const std::size_t at = apart + static_cast<std::size_t>(chance_->share() * last);
            const auto from = fixes_->begin() + static_cast<std::ptrdiff_t>(at - apart);
            const auto to = fixes_->begin() + static_cast<std::ptrdiff_t>(at + length + apart);
            const bool clean = std::none_of(
                from, to, [](const Fix& fix) { return fix.fault != Fault::none || fix.afterGap; });
            if (clean && std::all_of(from + apart, to - apart, fits)) {
                return at;
            }
        }
    }

    std::vector<Fix>* fixes_;
    const DayFacts* facts_;
    Chance* chance_;
    int event_ = 1;
};

} // namespace

void putFaultsIn(std::vector<Fix>& fixes, const FaultWish& wish, const DayFacts& facts,
                 Chance& chance) {
    FaultMaker maker(fixes, facts, chance);
    maker.stuck(wish.stuck);
    maker.doubleEchoes(wish.doubleEchoes);
    maker.positionJumps(wish.positionJumps);
    maker.dropOuts(wish.zeroDepths, Fault::zeroDepth);
    maker.dropOuts(wish.noDepths, Fault::noDepth);
    maker.spikes(wish.spikes);
    maker.lines(wish.badChecksums, Fault::badChecksum);
    maker.lines(wish.truncated, Fault::truncated);
    maker.lines(wish.voidFixes, Fault::voidFix);
}

} // namespace sample
