// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <memory>
#include <vector>

namespace days {

/// The steps of a day, one below the other, one open at a time; a closed one says its state in a
/// line, so that the closed panel is a summary of everything.
class StepPanel : public QWidget {
    Q_OBJECT
public:
    explicit StepPanel(QWidget* parent = nullptr);
    ~StepPanel() override;

    /// Adds a step below the others; the panel owns `body`. \return its position.
    int addStep(const QString& title, QWidget* body);
    /// The line beside the title. A stale step says that something above it changed.
    void setState(int step, const QString& line, bool isStale = false);
    void openStep(int step);
    [[nodiscard]] int openStep() const;
    [[nodiscard]] int count() const;
    [[nodiscard]] QString stateOf(int step) const;

signals:
    void stepOpened(int step);

private:
    struct Step;
    std::vector<std::unique_ptr<Step>> steps_;
    int open_ = -1;
};

} // namespace days
