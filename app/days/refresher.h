// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QWidget>

#include <functional>

namespace days {

/// Shows a panel anew when something has changed: once in a turn of the event loop, however much
/// changed in it, and only while somebody sees the panel; else as soon as somebody does.
class Refresher : public QObject {
    Q_OBJECT
public:
    /// \param refresh shows the panel as things are now.
    Refresher(QWidget* panel, std::function<void()> refresh);

    /// Something has changed.
    void ask();
    /// Shows what was asked for now, seen or not.
    void finish();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refreshIfSeen();

    QWidget* panel_;
    std::function<void()> refresh_;
    bool isBehind_ = false;
    bool isAsked_ = false; ///< Will be looked to when the event loop comes round.
};

} // namespace days
