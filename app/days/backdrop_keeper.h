// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"
#include "app/days/day_context.h"
#include "core/water/steps/show_backdrop.h"

#include <QObject>
#include <QTimer>

#include <optional>

namespace days {

/// Keeps under the chart what the user chose as its backdrop, as finely as the screen shows it.
///
/// File, strength and whether it is shown belong to the user's preferences and not to the water: a
/// path holds on this machine only, and a water that is handed on must be the same without it.
class BackdropKeeper : public QObject {
    Q_OBJECT
public:
    explicit BackdropKeeper(DayContext context, QObject* parent = nullptr);

    /// Lays the file under the chart; says what is wrong where it cannot, and keeps the old one.
    void choose(const QString& path);
    void takeAway();
    /// 0: not to be seen, 1: as it is.
    void setStrength(double strength);
    [[nodiscard]] QString path() const { return choice_.path; }
    [[nodiscard]] double strength() const { return choice_.strength; }
    /// What the chart shows at the moment; fetches the rest of the file for it, once the hand
    /// rests.
    void look(const chart::ViewFrame& view);

signals:
    /// Another file, another strength.
    void changed();

private:
    void takeFromPreferences();
    void keep();
    void lay(const QString& path, const water::BackdropPlace& place);
    void fetch();
    [[nodiscard]] geo::Box aroundWater() const;

    DayContext context_;
    preferences::BackdropChoice choice_;
    std::optional<water::BackdropPlace> place_;
    std::optional<gdal::PictureWindow> asked_; ///< What is being fetched.
    chart::ViewFrame view_;
    QTimer rest_;
};

} // namespace days
