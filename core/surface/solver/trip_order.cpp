// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/solver/trip_order.h"

#include "core/grid/distance_field.h"

#include <algorithm>
#include <cmath>

namespace surface::solver {

RoundTrip::RoundTrip(const grid::Mask& mask, geo::WaterPoint launch)
    : mask_(&mask), nearest_m_(mask.frame(), INFINITY) {
    addNode(launch);
    nearest_m_ = ways_m_.front();
}

void RoundTrip::addNode(geo::WaterPoint p) {
    const std::array<grid::Cell, 1> source{mask_->frame().cellOf(p)};
    nodes_.push_back(p);
    ways_m_.push_back(grid::distanceOverWater_m(*mask_, source));
}

double RoundTrip::way_m(std::size_t from, std::size_t to) const {
    const auto over_m = static_cast<double>(ways_m_[from][mask_->frame().cellOf(nodes_[to])]);
    return std::max(over_m, geo::distance_m(nodes_[from], nodes_[to]));
}

std::size_t RoundTrip::entry(const Visit& visit) const {
    return 1 + 2 * visit.line + (visit.isTurned ? 1 : 0);
}

std::size_t RoundTrip::exit(const Visit& visit) const {
    return 1 + 2 * visit.line + (visit.isTurned ? 0 : 1);
}

double RoundTrip::lengthOf_m(const std::vector<Visit>& order) const {
    double sum = 0.0;
    std::size_t at = 0;
    for (const Visit& visit : order) {
        sum += way_m(at, entry(visit)) +
               geo::distance_m(lines_[visit.line].start, lines_[visit.line].end);
        at = exit(visit);
    }
    return sum + way_m(at, 0);
}

double RoundTrip::length_m() const {
    return lengthOf_m(order_);
}

void RoundTrip::add(const Chord& line) {
    before_ = order_;
    lines_.push_back(line);
    addNode(line.start);
    addNode(line.end);
    std::vector<Visit> best;
    double least_m = INFINITY;
    for (std::size_t at = 0; at <= order_.size(); ++at) {
        for (const bool isTurned : {false, true}) {
            std::vector<Visit> tried = order_;
            tried.insert(tried.begin() + static_cast<std::ptrdiff_t>(at),
                         Visit{lines_.size() - 1, isTurned});
            if (const double tried_m = lengthOf_m(tried); best.empty() || tried_m < least_m) {
                least_m = tried_m;
                best = std::move(tried);
            }
        }
    }
    order_ = std::move(best);
    better();
    for (std::size_t i = 0; i < nearest_m_.size(); ++i) {
        nearest_m_[i] =
            std::min({nearest_m_[i], ways_m_[nodes_.size() - 2][i], ways_m_[nodes_.size() - 1][i]});
    }
}

void RoundTrip::better() {
    double least_m = lengthOf_m(order_);
    bool isBetter = true;
    while (isBetter) {
        isBetter = false;
        for (std::size_t i = 0; i < order_.size(); ++i) {
            for (std::size_t j = i; j < order_.size(); ++j) {
                std::vector<Visit> tried = order_;
                std::reverse(tried.begin() + static_cast<std::ptrdiff_t>(i),
                             tried.begin() + static_cast<std::ptrdiff_t>(j) + 1);
                for (std::size_t k = i; k <= j; ++k) {
                    tried[k].isTurned = !tried[k].isTurned;
                }
                if (const double tried_m = lengthOf_m(tried); tried_m < least_m - 0.01) {
                    least_m = tried_m;
                    order_ = std::move(tried);
                    isBetter = true;
                }
            }
        }
    }
}

void RoundTrip::undo() {
    order_ = before_;
    lines_.pop_back();
    nodes_.resize(nodes_.size() - 2);
    ways_m_.resize(ways_m_.size() - 2);
    nearest_m_ = ways_m_.front();
    for (const grid::Grid<float>& way_m : ways_m_) {
        for (std::size_t i = 0; i < nearest_m_.size(); ++i) {
            nearest_m_[i] = std::min(nearest_m_[i], way_m[i]);
        }
    }
}

std::vector<Chord> RoundTrip::inOrder() const {
    std::vector<Chord> chords;
    for (const Visit& visit : order_) {
        const Chord& line = lines_[visit.line];
        chords.push_back(visit.isTurned ? Chord{line.end, line.start} : line);
    }
    return chords;
}

} // namespace surface::solver
