// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/belief_profiles.h"

#include "app/edits/change_water.h"
#include "app/wording/tongue.h"
#include "core/acts/profiles.h"

namespace edits {

void saveProfile(open_water::OpenWater& open, const std::string& name) {
    act(open, wording::Tongue::tr("Save beliefs"),
        [&](const water::Water& water) { return acts::saveProfile(water, name); });
}

void takeProfile(open_water::OpenWater& open, const std::string& name) {
    act(open, wording::Tongue::tr("Use saved beliefs"),
        [&](const water::Water& water) { return acts::takeProfile(water, name); });
}

void nameProfile(open_water::OpenWater& open, const std::string& name, const std::string& newName) {
    act(open, wording::Tongue::tr("Name saved beliefs"),
        [&](const water::Water& water) { return acts::nameProfile(water, name, newName); });
}

void removeProfile(open_water::OpenWater& open, const std::string& name) {
    act(open, wording::Tongue::tr("Remove saved beliefs"),
        [&](const water::Water& water) { return acts::removeProfile(water, name); });
}

} // namespace edits
