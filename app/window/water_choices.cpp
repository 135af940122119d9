// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/water_choices.h"

#include "app/wording/tongue.h"

#include <QDateTime>
#include <QFileInfo>

namespace window {

std::vector<WaterChoice> waterChoices(const preferences::Preferences& preferences,
                                      const open_water::OpenWater& open) {
    const auto& unnamed = open.unnamedWaters();
    QStringList paths = preferences.recentWaters();
    if (unnamed) {
        paths += unnamed->files();
    }
    paths.removeDuplicates();
    std::vector<WaterChoice> choices;
    for (const QString& path : paths) {
        const bool isUnnamed = unnamed && unnamed->holds(path);
        choices.push_back({path, isUnnamed ? wording::Tongue::tr("Water without a name, of %1")
                                                 .arg(wording::Tongue::locale().toString(
                                                     QFileInfo(path).lastModified(),
                                                     wording::Tongue::tr("ddd d MMM yyyy, HH:mm")))
                                           : path});
    }
    return choices;
}

} // namespace window
