// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/mark.h"

#include <cstddef>
#include <vector>

#include <QString>
#include <QStringList>

namespace chart {

/// Something of a mark that the hand can take hold of.
struct LiePart {
    enum class Kind { boat, bow, stern, bait };
    int rank = 0; ///< Of the mark.
    Kind kind = Kind::boat;
    std::size_t bait = 0; ///< Which of the mark's rods.
    friend bool operator==(const LiePart&, const LiePart&) = default;
};

/// A mark as it would lie with what the hand holds where it is now.
struct TriedLie {
    marks::Mark mark;
    units::Length boatLength;
    QStringList breaks; ///< What to mind of it, the gravest first.
    QString cannot;     ///< Why nothing can be laid there; then the mark is as it was planned.
};

} // namespace chart
