// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/plane.h"
#include "sample-survey/shore.h"

#include <string>
#include <vector>

namespace sample {

/// What a place on the bottom is: the kinds for which the hidden catch rates differ.
enum class Ground { open, streamBed, hump, bar, shelfEdge, weedEdge };

std::string nameOf(Ground ground);

/// A place with a name of its own.
struct NamedPlace {
    std::string kind;
    std::string name;
    Point at;
    std::string note;
};

/// The bottom of the invented water: a formula, so that the truth is known everywhere. Depths are
/// in metres below chart level, 0 on and outside the shore.
class Bottom {
public:
    explicit Bottom(const Shore& shore);

    double depth_m(Point p) const;
    /// Steepness as rise over run, from central differences over two metres.
    double slope(Point p) const;
    /// Share of the bottom under thick or thin weed, 0 to 1.
    double weedShare(Point p) const;
    Ground groundAt(Point p) const;
    /// Whether a point lies in the weedy bay, beyond its neck.
    bool inSallowArm(Point p) const;

    const Shore& shore() const { return *shore_; }
    const Line& streamBed() const { return stream_; }
    const Line& lade() const { return lade_; }
    const Line& barCrest() const { return bar_; }
    const std::vector<NamedPlace>& places() const { return places_; }

    double secchiDepth_m() const { return 2.1; }
    /// Depth at which weed thins out: Chambers and Kalff 1985 at the Secchi depth above gives 3.3
    /// m.
    double weedLimit_m() const { return 3.3; }

private:
    double valley_m(Point p, double soft_m) const;
    double shelved_m(Point p, double soft_m, double valley_m) const;

    const Shore* shore_;
    Line stream_;
    Line lade_;
    Line bar_;
    std::vector<NamedPlace> places_;
};

} // namespace sample
