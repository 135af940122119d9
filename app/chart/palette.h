// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/colour_space.h"
#include "app/chart/inks.h"

#include <QColor>

#include <cstddef>
#include <vector>

namespace chart {

/// A colour of letters and the ground they stand on; their contrast is at least 4.5.
struct Lettering {
    QColor letters;
    QColor ground;
};

/// All colours of chart, side view and paper, read once from resources/colours: the depth ramp,
/// whose lightness falls steadily with depth, and a few strong inks that stand out on it.
class Palette {
public:
    [[nodiscard]] static const Palette& of(Inks inks);
    /// The light theme, which is also what is printed in colour.
    [[nodiscard]] static const Palette& screen() { return of(Inks::light); }
    /// The grey twin, for a black and white page.
    [[nodiscard]] static const Palette& grey() { return of(Inks::grey); }

    /// The ramp at a share of the range, 0 (shore) to 1 (deepest); held to that range.
    [[nodiscard]] QColor depthAt(double share) const;
    /// The step of the ramp for one of `count` bands.
    [[nodiscard]] QColor band(std::size_t index, std::size_t count) const;
    /// Later pass minus earlier, as a share of a full difference: paper at 0, the full colour of
    /// its side at -1 and 1. Of the grey twin only how much it is can be read.
    [[nodiscard]] QColor difference(double share) const;
    /// Letters on `ground`, which is lightened where neither ink nor paper would stand on it.
    [[nodiscard]] Lettering lettersOn(const QColor& ground) const;

    QColor ink;      ///< Letters and lines.
    QColor faintInk; ///< Second voice; still 4.5 on paper.
    QColor paper;    ///< Land and the ground of everything.
    QColor card;     ///< A lighter paper for panels.
    QColor field;    ///< Where something can be typed.
    QColor edge;     ///< Round fields and buttons; at least 3 on paper, card and field.
    QColor rust;     ///< Boat, ropes, marks.
    QColor plum;     ///< Rods and fish.
    QColor reed;     ///< Weed, as letters and in the side view.
    QColor weed;     ///< Weed drawn on shallow water.
    QColor sand;     ///< Trust, and the land along the shore.
    QColor bed;      ///< Ground below the bottom in the side view.
    QColor water;    ///< Water in the side view.

private:
    struct Stop {
        double share = 0.0;
        Oklch colour;
    };
    explicit Palette(Inks inks);
    std::vector<Stop> ramp_;
    QColor shallower_;
    QColor deeper_;
};

[[nodiscard]] Srgb srgbFrom(const QColor& colour);
[[nodiscard]] QColor colourFrom(const Srgb& colour);
/// `share` of b in a, mixed as coded colours.
[[nodiscard]] QColor mixed(const QColor& a, const QColor& b, double share);
[[nodiscard]] QColor withAlpha(QColor colour, double alpha);

} // namespace chart
