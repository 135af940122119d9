// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageSize>
#include <QRectF>
#include <QSizeF>

namespace paper {

/// One unit of the painter on a sheet: a quarter of a millimetre, so that letters drawn at scale 1
/// are 3 mm (8.5 points) high.
inline constexpr double unitsPerMillimetre = 4.0;

/// A page in millimetres. A value.
struct SheetLayout {
    QSizeF page_mm{210.0, 297.0}; ///< A4 upright.
    double margin_mm = 12.0;      ///< Most printers reach to within 5 mm of the edge.
    double footer_mm = 8.0;       ///< For the page number, inside the margin.

    [[nodiscard]] static SheetLayout a4(bool isWide = false) {
        return isWide ? SheetLayout{{297.0, 210.0}} : SheetLayout{};
    }
    /// Upright, on the paper that was put in.
    [[nodiscard]] static SheetLayout on(const QPageSize& paper) {
        const QSizeF mm = paper.size(QPageSize::Millimeter);
        return paper.isValid() ? SheetLayout{mm.width() <= mm.height() ? mm : mm.transposed()}
                               : SheetLayout{};
    }
    /// What may be drawn on, without the footer, in units of the painter.
    [[nodiscard]] QRectF room() const {
        return {margin_mm * unitsPerMillimetre, margin_mm * unitsPerMillimetre,
                (page_mm.width() - 2.0 * margin_mm) * unitsPerMillimetre,
                (page_mm.height() - 2.0 * margin_mm - footer_mm) * unitsPerMillimetre};
    }
};

/// The denominator of a round map scale (1 : 2500) at which `length_m` fits into `units`.
[[nodiscard]] double roundScale(double length_m, double units);
/// Units of the painter for a metre at 1 : `denominator`.
[[nodiscard]] inline double unitsPerMetre(double denominator) {
    return 1000.0 * unitsPerMillimetre / denominator;
}

} // namespace paper
