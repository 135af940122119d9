// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_settings.h"

#include "app/edits/change_water.h"
#include "core/acts/facts.h"

namespace edits {

base::Result<void> changeSettings(open_water::OpenWater& open, const QString& name,
                                  const std::function<void(water::Settings&)>& changeThem) {
    return tryAct(open, name, [&](const water::Water& water) {
        water::Settings settings = water.settings;
        changeThem(settings);
        return acts::setSettings(water, settings);
    });
}

} // namespace edits
