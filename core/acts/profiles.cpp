// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/profiles.h"

#include <algorithm>

namespace acts {

using base::ErrorKind;
using base::Result;
using water::BeliefProfile;
using water::Water;

namespace {

std::unexpected<base::Error> noSuchProfile(const Water& water, const std::string& name) {
    std::string known;
    for (const BeliefProfile& profile : water.beliefProfiles) {
        known += (known.empty() ? "choose one of " : ", ") + profile.name;
    }
    return base::fail(ErrorKind::wrongUse, "no beliefs are saved as '" + name + "'", "profiles",
                      known.empty() ? "save some first" : known);
}

std::unexpected<base::Error> noName() {
    return base::fail(ErrorKind::wrongUse, "beliefs cannot be saved without a name", "profiles",
                      "give one, such as windy autumn");
}

auto profileNamed(Water& water, const std::string& name) {
    return std::ranges::find(water.beliefProfiles, name, &BeliefProfile::name);
}

} // namespace

Result<Water> saveProfile(const Water& water, const std::string& name) {
    if (name.empty()) {
        return noName();
    }
    Water after = water;
    const auto known = profileNamed(after, name);
    if (known != after.beliefProfiles.end()) {
        known->weights = water.plan.weights;
    } else {
        after.beliefProfiles.push_back({name, water.plan.weights});
    }
    return after;
}

Result<Water> takeProfile(const Water& water, const std::string& name) {
    Water after = water;
    const auto known = profileNamed(after, name);
    if (known == after.beliefProfiles.end()) {
        return noSuchProfile(water, name);
    }
    after.plan.weights = known->weights;
    return after;
}

Result<Water> nameProfile(const Water& water, const std::string& name, const std::string& newName) {
    Water after = water;
    const auto known = profileNamed(after, name);
    if (known == after.beliefProfiles.end()) {
        return noSuchProfile(water, name);
    }
    if (newName.empty()) {
        return noName();
    }
    const auto other = profileNamed(after, newName);
    if (other != after.beliefProfiles.end() && other != known) {
        return base::fail(ErrorKind::wrongUse,
                          "other beliefs are saved as '" + newName + "' already", "profiles",
                          "choose another name, or remove those first");
    }
    known->name = newName;
    return after;
}

Result<Water> removeProfile(const Water& water, const std::string& name) {
    Water after = water;
    const auto known = profileNamed(after, name);
    if (known == after.beliefProfiles.end()) {
        return noSuchProfile(water, name);
    }
    after.beliefProfiles.erase(known);
    return after;
}

} // namespace acts
