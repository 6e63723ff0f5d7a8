#include "page/cairo_pages.hpp"

#include <cmath>
#include <memory>
#include <optional>

#include <cairo-ft.h>
#include <cairo-pdf.h>
#include <cairo-svg.h>

#include "page/font.hpp"
#include "page/pdf_language.hpp"

namespace shaftcut {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr double hatch_spacing = 2.0, hatch_width = 0.35;

using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
using Context = std::unique_ptr<cairo_t, decltype(&cairo_destroy)>;
using Face = std::unique_ptr<cairo_font_face_t, decltype(&cairo_font_face_destroy)>;

void check(cairo_status_t status)
{
    if (status != CAIRO_STATUS_SUCCESS) throw DrawingFault(cairo_status_to_string(status));
}

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length)
{
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

// A font file as cairo needs it: all of it lives until cairo's own caches let go of the face.
struct FileFace {
    std::shared_ptr<const std::string> bytes;
    FT_Library library = nullptr;
    FT_Face face = nullptr;
    ~FileFace() { FT_Done_FreeType(library); }
};

Face load_face(const FontFile& font)
{
    static const cairo_user_data_key_t key{};
    auto file = std::make_unique<FileFace>();
    file->bytes = font.bytes;
    if (!font.bytes || FT_Init_FreeType(&file->library) != 0
        || FT_New_Memory_Face(file->library, reinterpret_cast<const FT_Byte*>(font.bytes->data()), static_cast<FT_Long>(font.bytes->size()), 0, &file->face) != 0)
        throw FontFault(font.name);
    Face face(cairo_ft_font_face_create_for_ft_face(file->face, FT_LOAD_NO_HINTING), cairo_font_face_destroy);
    check(cairo_font_face_set_user_data(face.get(), &key, file.get(), [](void* held) { delete static_cast<FileFace*>(held); }));
    static_cast<void>(file.release());  // now the face's
    return face;
}

// Dark modules that touch in a row are one rectangle: no seam between them, and half as much to write.
void fill_code(cairo_t* context, const Code& code)
{
    const double module = code.box.width / code.modules;
    const auto dark = [&](int row, int column) { return column < code.modules && code.dark[static_cast<std::size_t>(row * code.modules + column)]; };
    cairo_set_source_rgb(context, 0, 0, 0);
    for (int row = 0; row < code.modules; ++row)
        for (int column = 0; column < code.modules; ++column) {
            int run = 0;
            while (dark(row, column + run)) ++run;
            if (run > 0) cairo_rectangle(context, code.box.x + column * module, code.box.y + row * module, run * module, module);
            column += run;
        }
    cairo_fill(context);
}

// A code as a PDF holds it once, however often it is drawn: it has two hundred rectangles, and thousands of labels have the same.
struct CodeForm {
    Code code;  // at the origin
    Surface surface;
};

CodeForm form_of(Code code)
{
    code.box.x = code.box.y = 0;
    const cairo_rectangle_t extents{0, 0, code.box.width, code.box.height};
    Surface surface(cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, &extents), cairo_surface_destroy);
    const Context context(cairo_create(surface.get()), cairo_destroy);
    fill_code(context.get(), code);
    check(cairo_status(context.get()));
    return {std::move(code), std::move(surface)};
}

// Draws marks on one surface, in millimetres.
class Drawing {
public:
    Drawing(cairo_surface_t* surface, const FontFiles& fonts)
        : context_(cairo_create(surface), cairo_destroy), regular_(load_face(fonts.regular)), bold_(load_face(fonts.bold))
    {
        const std::unique_ptr<cairo_font_options_t, decltype(&cairo_font_options_destroy)> options(cairo_font_options_create(), cairo_font_options_destroy);
        cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
        cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
        cairo_set_font_options(context_.get(), options.get());
        cairo_scale(context_.get(), points_per_mm, points_per_mm);
    }

    void draw(const Path& path)
    {
        trace(path);
        if (path.fill == Fill::hatched) hatch();
        else if (path.fill != Fill::none) fill(path.fill);
        if (path.width > 0) stroke(path);
        cairo_new_path(context_.get());
    }

    void draw(const Disc& disc)
    {
        cairo_new_path(context_.get());
        cairo_arc(context_.get(), disc.centre.x, disc.centre.y, disc.radius, 0, 2 * 3.14159265358979323846);
        if (disc.fill != Fill::none) fill(disc.fill);
        if (disc.width > 0) stroke({{}, true, disc.width, disc.fill, {}});
        cairo_new_path(context_.get());
    }

    void draw(const Text& text)
    {
        const double em = text.cap_height / cap_height_of_em;
        cairo_matrix_t size;
        cairo_matrix_init_scale(&size, em * text.stretch, em);
        ink(text.ink == Ink::white ? 1 : 0);
        cairo_set_font_face(context_.get(), (text.weight == Weight::bold ? bold_ : regular_).get());
        cairo_set_font_matrix(context_.get(), &size);
        cairo_move_to(context_.get(), text.baseline.x, text.baseline.y);
        cairo_show_text(context_.get(), text.text.c_str());
        cairo_new_path(context_.get());
    }

    void draw(const Code& code)
    {
        if (cairo_surface_get_type(cairo_get_target(context_.get())) != CAIRO_SURFACE_TYPE_PDF) return fill_code(context_.get(), code);
        if (!form_ || form_->code.dark != code.dark || form_->code.box.width != code.box.width) form_ = form_of(code);
        cairo_set_source_surface(context_.get(), form_->surface.get(), code.box.x, code.box.y);
        cairo_paint(context_.get());
    }

    void draw(const Mark& mark) { std::visit([this](const auto& what) { draw(what); }, mark.what); }

    // Under one tag for each run of marks of the same part.
    void draw_tagged(const Page& page)
    {
        for (std::size_t i = 0; i < page.marks.size(); ++i) {
            const bool first = i == 0 || page.marks[i].part != page.marks[i - 1].part;
            const bool last = i + 1 == page.marks.size() || page.marks[i].part != page.marks[i + 1].part;
            if (first) cairo_tag_begin(context_.get(), tag_of(page.marks[i].part), "");
            draw(page.marks[i]);
            if (last) cairo_tag_end(context_.get(), tag_of(page.marks[i].part));
        }
    }

    cairo_t* context() { return context_.get(); }
    void check_status() const { check(cairo_status(context_.get())); }

private:
    static const char* tag_of(Part part)
    {
        switch (part) {
        case Part::heading: return "H1";
        case Part::table: return "Table";
        case Part::figure: return "Figure";
        case Part::paragraph: break;
        }
        return "P";
    }

    void ink(double level) { cairo_set_source_rgb(context_.get(), level, level, level); }

    void trace(const Path& path)
    {
        cairo_new_path(context_.get());
        for (const Point& point : path.points) cairo_line_to(context_.get(), point.x, point.y);
        if (path.closed) cairo_close_path(context_.get());
    }

    void fill(Fill fill)
    {
        ink(fill == Fill::white ? 1 : 0);
        cairo_fill_preserve(context_.get());
    }

    void stroke(const Path& path)
    {
        ink(0);
        cairo_set_line_width(context_.get(), path.width);
        cairo_set_dash(context_.get(), path.dashes.data(), static_cast<int>(path.dashes.size()), 0);
        cairo_stroke_preserve(context_.get());
        cairo_set_dash(context_.get(), nullptr, 0, 0);
    }

    // The current path filled with lines at 45°, which keep their places on the page from shape to shape.
    void hatch()
    {
        double left = 0, top = 0, right = 0, bottom = 0;
        const std::unique_ptr<cairo_path_t, decltype(&cairo_path_destroy)> outline(cairo_copy_path(context_.get()), cairo_path_destroy);
        cairo_path_extents(context_.get(), &left, &top, &right, &bottom);
        cairo_save(context_.get());
        cairo_clip(context_.get());
        const double height = bottom - top;
        for (int line = static_cast<int>((left + top) / hatch_spacing); line * hatch_spacing < right + bottom; ++line) {
            const double sum = line * hatch_spacing;
            cairo_move_to(context_.get(), sum - top, top);
            cairo_line_to(context_.get(), sum - top - height, bottom);
        }
        stroke({{}, false, hatch_width, Fill::none, {}});
        cairo_restore(context_.get());
        cairo_new_path(context_.get());
        cairo_append_path(context_.get(), outline.get());
    }

    Context context_;
    Face regular_, bold_;
    std::optional<CodeForm> form_;  // of the last code: equal ones follow each other
};

void set_info(cairo_surface_t* surface, const DocumentInfo& info)
{
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, info.title.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_AUTHOR, info.author.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_SUBJECT, info.subject.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "shaftcut");
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, (info.created + "T12:00:00Z").c_str());
}

// The identifiers in an SVG count the surfaces made by the process so far: they are written without that count.
std::string without_surface_count(std::string svg)
{
    constexpr std::string_view name = "id=\"surface";
    for (std::size_t at = svg.find(name); at != std::string::npos; at = svg.find(name, at + name.size())) {
        const std::size_t digits = at + name.size();
        svg.erase(digits, svg.find('"', digits) - digits);
    }
    return svg;
}

}  // namespace

std::string pdf_of(const std::vector<Page>& pages, const DocumentInfo& info, const FontFiles& fonts)
{
    return pdf_of(pages.size(), [&](std::size_t number) { return pages[number]; }, info, fonts);
}

std::string pdf_of(std::size_t count, const std::function<Page(std::size_t)>& page, const DocumentInfo& info, const FontFiles& fonts)
{
    std::string bytes;
    Page next = page(0);
    // With the first page's size at once: setting it later would drop a tag that is already open.
    const double width = next.width * points_per_mm, height = next.height * points_per_mm;
    const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, width, height), cairo_surface_destroy);
    // 1.4 has a plain cross-reference table with every version of cairo, which with_language() adds to.
    cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_4);
    set_info(surface.get(), info);
    Drawing drawing(surface.get(), fonts);
    cairo_tag_begin(drawing.context(), "Document", "");
    for (std::size_t number = 0; number < count; ++number) {
        if (number > 0) next = page(number);
        drawing.draw_tagged(next);
        cairo_show_page(drawing.context());
    }
    cairo_tag_end(drawing.context(), "Document");
    drawing.check_status();
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()));
    return with_language(std::move(bytes), info.language);
}

std::string png_of(const Page& page, double dots_per_inch, const FontFiles& fonts)
{
    const double scale = dots_per_inch / 25.4;
    const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, static_cast<int>(std::lround(page.width * scale)),
                                                     static_cast<int>(std::lround(page.height * scale))), cairo_surface_destroy);
    cairo_surface_set_device_scale(surface.get(), scale / points_per_mm, scale / points_per_mm);
    Drawing drawing(surface.get(), fonts);
    cairo_set_source_rgb(drawing.context(), 1, 1, 1);
    cairo_paint(drawing.context());
    for (const Mark& mark : page.marks) drawing.draw(mark);
    drawing.check_status();
    std::string bytes;
    check(cairo_surface_write_to_png_stream(surface.get(), append, &bytes));
    return bytes;
}

std::string svg_of(const Page& page, const FontFiles& fonts)
{
    std::string bytes;
    const Surface surface(cairo_svg_surface_create_for_stream(append, &bytes, page.width * points_per_mm, page.height * points_per_mm),
                          cairo_surface_destroy);
    Drawing drawing(surface.get(), fonts);
    for (const Mark& mark : page.marks) drawing.draw(mark);
    drawing.check_status();
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()));
    return without_surface_count(std::move(bytes));
}

std::string cairo_built_with() { return CAIRO_VERSION_STRING; }

}  // namespace shaftcut
