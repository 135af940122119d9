// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/fact_list.h"

namespace widgets {

FactList::FactList(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::RichText);
    setWordWrap(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    hide();
}

void FactList::setFacts(const std::vector<Fact>& facts) {
    const QString faint = palette().color(QPalette::PlaceholderText).name();
    QString rows;
    QStringList spoken;
    for (const auto& [name, words] : facts) {
        rows += QStringLiteral("<tr><td style='color:%1; padding-right:10px'>%2</td>"
                               "<td>%3</td></tr>")
                    .arg(faint, QString(name).replace(' ', QChar::Nbsp).toHtmlEscaped(),
                         words.toHtmlEscaped());
        spoken.push_back(name + QStringLiteral(": ") + words);
    }
    setText(QStringLiteral("<table cellspacing='0' cellpadding='0'>%1</table>").arg(rows));
    setAccessibleName(spoken.join('\n'));
    setVisible(!facts.empty());
}

} // namespace widgets
