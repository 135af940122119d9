// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/questions/review_log.h"

#include <QObject>

namespace days::looking_back {

/// Which part of the log is looked back on: one for all steps and for the chart. How it is sorted
/// is each step's own.
class LogQuestion : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    [[nodiscard]] const water::ReviewQuestion& question() const { return question_; }
    [[nodiscard]] water::ReviewQuestion sortedBy(water::ReviewBy by) const {
        water::ReviewQuestion question = question_;
        question.by = by;
        return question;
    }
    /// True where the whole log is asked about.
    [[nodiscard]] bool isAll() const { return question_ == water::ReviewQuestion(); }
    /// Asks about another part of the log, and tells.
    void ask(water::ReviewQuestion question) {
        question.by = water::ReviewQuestion().by;
        if (question != question_) {
            question_ = std::move(question);
            emit changed();
        }
    }

signals:
    void changed();

private:
    water::ReviewQuestion question_;
};

} // namespace days::looking_back
