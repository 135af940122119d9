// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"
#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"
#include "app/window/water_choices.h"

#include <QFrame>

class QGridLayout;
class QScrollArea;
class QToolButton;

namespace store {
class Copies;
}

namespace window {

/// What stands in the place of the chart as long as no water is open: what to drop on the window, a
/// new water, the sample, and the waters that can be opened again as small pictures.
class StartPage : public QFrame {
    Q_OBJECT
public:
    /// \param copies of waters, which can be gone back to.
    StartPage(open_water::OpenWater& open, preferences::Preferences& preferences,
              const store::Copies& copies, QWidget* parent);

    /// Lists what there is now, and shows or hides itself.
    void refresh();
    /// Waits until all pictures are there.
    void finishPictures() { pictures_.finishAll(); }

signals:
    void chosen(const QString& path);
    void newAsked();
    void sampleAsked();
    /// The copies of this water are asked for.
    void goBackAsked(const QString& path);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layWaters();
    QWidget* makeCard(const WaterChoice& choice);
    void startPicture(QToolButton* button, const QString& path);

    open_water::OpenWater& open_;
    preferences::Preferences& preferences_;
    const store::Copies& copies_;
    QScrollArea* scroll_;
    QGridLayout* grid_ = nullptr;
    QList<QWidget*> cards_;
    jobs::JobRunner pictures_;
};

} // namespace window
