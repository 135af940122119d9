// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/logbook/stay.h"

#include <QString>

#include <functional>
#include <vector>

namespace days::looking_back {

/// How one value of a stay or run is shown and typed. `write` returns whether the text is right.
template <class Thing>
struct FieldOf {
    QString label;
    QString help;
    QString hint;
    QString whenEmpty;
    std::function<QString(const Thing&, const wording::Words&, const units::Clock&)> shown;
    std::function<bool(Thing&, const QString&, const wording::Words&, const units::Clock&)> write;
};

/// All that can be noted of a stay.
[[nodiscard]] std::vector<FieldOf<logbook::Stay>> stayFields();
/// All that can be noted of a run. \param stayOf the stay that the run is of.
[[nodiscard]] std::vector<FieldOf<logbook::Fish>>
runFields(const std::function<logbook::Stay()>& stayOf);

} // namespace days::looking_back
