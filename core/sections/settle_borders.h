// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/sections/pair_cut.h"
#include "core/sections/part_cost.h"

#include <array>
#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

namespace sections {

/// Lets the borders between parts settle: piece by piece goes over to the neighbouring part where
/// that lowers the cost of the two most, as long as its own part hangs together without it. Ends
/// where no single piece can better anything; every step lowers the cost, so it does end. The order
/// is first in, first out from the pieces' own order: same input, same parts.
///
/// Ground is what is moved (lumps or cells):
///   size(), partOf(v), setPart(v, part), sumsOf(v), hangsTogetherWithout(v),
///   eachSide(v, f(to)), each(v, f(to, border_m)) with a negative `to` for the border with what is
///   not fishable.
template <class Ground>
class BorderSettling {
public:
    BorderSettling(Ground& ground, std::vector<PartSums>& parts, const PartCost& cost)
        : ground_(ground), parts_(parts), cost_(cost), isWaiting_(ground.size(), 0) {}

    /// \param first pieces to look at, ascending; those round a moved piece follow.
    void run(const std::vector<std::size_t>& first, const base::Progress& progress) {
        for (const std::size_t v : first) {
            wait(v);
        }
        // Costs fall with every move, but could do so in ever smaller steps.
        constexpr std::size_t mostLooks = 200;
        std::size_t left = mostLooks * (first.size() + 100);
        while (!waiting_.empty() && left-- > 0 && (left % 4096 != 0 || !progress.stopAsked())) {
            const std::size_t v = waiting_.front();
            waiting_.pop_front();
            isWaiting_[v] = 0;
            look(v);
        }
    }

private:
    /// How much of a piece's border is with one part.
    struct Touch {
        std::int32_t part = -1;
        double border_m = 0.0;
        bool alongSide = false;
    };
    struct Move {
        std::int32_t to = -1;
        PartSums from;
        PartSums into;
        double gain = 1e-9; ///< Less is rounding.
    };

    void wait(std::size_t v) {
        if (isWaiting_[v] == 0) {
            isWaiting_[v] = 1;
            waiting_.push_back(v);
        }
    }

    PartSums& sums(std::int32_t part) { return parts_[static_cast<std::size_t>(part)]; }

    Touch& touchOf(std::int32_t part) {
        for (std::size_t k = 0; k < touched_; ++k) {
            if (touches_[k].part == part) {
                return touches_[k];
            }
        }
        if (touched_ == touches_.size()) {
            touches_.resize(touched_ + 8);
        }
        touches_[touched_] = {part, 0.0, false};
        return touches_[touched_++];
    }

    void look(std::size_t v) {
        const std::int32_t own = ground_.partOf(v);
        touched_ = 0;
        double round_m = 0.0;
        bool isOnBorder = false;
        ground_.each(v, [&](std::int64_t to, double border_m) {
            round_m += border_m;
            const std::int32_t part = to < 0 ? -1 : ground_.partOf(static_cast<std::size_t>(to));
            touchOf(part).border_m += border_m;
            isOnBorder = isOnBorder || (part >= 0 && part != own);
        });
        if (!isOnBorder) {
            return;
        }
        ground_.eachSide(v, [&](std::size_t to) { touchOf(ground_.partOf(to)).alongSide = true; });
        const Move move = bestMove(v, own, round_m);
        if (move.to < 0 || !ground_.hangsTogetherWithout(v)) {
            return;
        }
        sums(own) = move.from;
        sums(move.to) = move.into;
        ground_.setPart(v, move.to);
        wait(v);
        ground_.each(v, [&](std::int64_t to, double) {
            if (to >= 0) {
                wait(static_cast<std::size_t>(to));
            }
        });
    }

    Move bestMove(std::size_t v, std::int32_t own, double round_m) {
        Move best;
        const PartSums piece = ground_.sumsOf(v);
        PartSums without = sums(own);
        without.add(piece, -1.0);
        without.border_m += 2.0 * touchOf(own).border_m - round_m;
        if (without.area_m2 < limits_.least * cost_.wanted_m2) {
            return best;
        }
        const double saved = cost_.of(sums(own)) - cost_.of(without);
        for (std::size_t k = 0; k < touched_; ++k) {
            const Touch touch = touches_[k];
            if (touch.part < 0 || touch.part == own || !touch.alongSide) {
                continue;
            }
            PartSums with = sums(touch.part);
            with.add(piece);
            with.border_m += round_m - 2.0 * touch.border_m;
            if (with.area_m2 > limits_.most * cost_.wanted_m2) {
                continue;
            }
            const double gain = saved - (cost_.of(with) - cost_.of(sums(touch.part)));
            if (gain > best.gain) {
                best = {touch.part, without, with, gain};
            }
        }
        return best;
    }

    Ground& ground_;
    std::vector<PartSums>& parts_;
    const PartCost& cost_;
    SizeLimits limits_{};
    std::vector<std::uint8_t> isWaiting_;
    std::deque<std::size_t> waiting_;
    std::vector<Touch> touches_ = std::vector<Touch>(8);
    std::size_t touched_ = 0;
};

} // namespace sections
