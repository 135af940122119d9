// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

#include <QFrame>

#include <vector>

namespace window {

/// A water that can be opened again, and what it is called in lists.
struct WaterChoice {
    QString path;
    QString words;
};

/// The waters opened lately, the last one first, then all others that nobody has named: none of
/// those is ever lost out of sight.
[[nodiscard]] std::vector<WaterChoice> waterChoices(const preferences::Preferences& preferences,
                                                    const open_water::OpenWater& open);

/// The waters that can be opened again, on the chart as long as no water is open.
class StartList : public QFrame {
    Q_OBJECT
public:
    StartList(open_water::OpenWater& open, preferences::Preferences& preferences, QWidget* parent);

    /// Lists what there is now, and shows or hides itself.
    void refresh();

signals:
    void chosen(const QString& path);

private:
    open_water::OpenWater& open_;
    preferences::Preferences& preferences_;
};

} // namespace window
