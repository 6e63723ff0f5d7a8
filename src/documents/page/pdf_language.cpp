#include "page/pdf_language.hpp"

#include <stdexcept>

#include <fmt/format.h>

namespace shaftcut {
namespace {

std::size_t found(std::size_t at)
{
    if (at == std::string::npos) throw std::invalid_argument("the PDF is not built as expected");
    return at;
}

// What follows the last `before` up to the next `after`.
std::string between(const std::string& pdf, std::string_view before, std::string_view after)
{
    const std::size_t from = found(pdf.rfind(before)) + before.size();
    return pdf.substr(from, found(pdf.find(after, from)) - from);
}

}  // namespace

std::string with_language(std::string pdf, std::string_view language)
{
    const std::string root = between(pdf, "/Root ", " ");
    const std::string size = between(pdf, "/Size ", "\n");
    const std::string info = between(pdf, "/Info ", " ");
    const std::string previous = between(pdf, "startxref\n", "\n");
    const std::string entries = between(pdf, "\n" + root + " 0 obj\n<<", ">>\nendobj");
    const std::size_t object = pdf.size();
    pdf += fmt::format("{} 0 obj\n<<{}   /Lang ({})\n>>\nendobj\n", root, entries, language);
    const std::size_t table = pdf.size();
    pdf += fmt::format("xref\n{} 1\n{:010} 00000 n \n", root, object);
    pdf += fmt::format("trailer\n<< /Size {}\n   /Root {} 0 R\n   /Info {} 0 R\n   /Prev {}\n>>\n", size, root, info, previous);
    return pdf + fmt::format("startxref\n{}\n%%EOF\n", table);
}

}  // namespace shaftcut
