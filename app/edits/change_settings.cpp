// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_settings.h"

#include "app/edits/change_water.h"

namespace edits {

base::Result<void> changeSettings(open_water::OpenWater& open, const QString& name,
                                  const std::function<void(water::Settings&)>& changeThem) {
    water::Settings settings = open.water()->settings;
    changeThem(settings);
    if (const auto problems = water::problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front());
    }
    change(open, name, {water::Part::facts},
           [&](water::Water& water) { water.settings = settings; });
    return {};
}

} // namespace edits
