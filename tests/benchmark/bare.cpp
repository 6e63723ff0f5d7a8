// The yardstick of cut_benchmark: one line of text in a PDF, and one in a workbook, with the libraries that the program
// uses and nothing else. Usage: bare FOLDER
#include <cairo-ft.h>
#include <cairo-pdf.h>
#include <xlsxwriter.h>

#include <string>

namespace {

bool draw_line(const std::string& path)
{
    FT_Library library = nullptr;
    FT_Face font = nullptr;
    if (FT_Init_FreeType(&library) != 0 || FT_New_Face(library, SHAFTCUT_FONT_DIR "/DejaVuSans.ttf", 0, &font) != 0) return false;
    cairo_surface_t* const surface = cairo_pdf_surface_create(path.c_str(), 595, 842);
    cairo_t* const context = cairo_create(surface);
    cairo_font_face_t* const face = cairo_ft_font_face_create_for_ft_face(font, FT_LOAD_NO_HINTING);
    cairo_set_font_face(context, face);
    cairo_set_font_size(context, 12);
    cairo_move_to(context, 50, 50);
    cairo_show_text(context, "One line of text");
    const bool drawn = cairo_status(context) == CAIRO_STATUS_SUCCESS;
    cairo_font_face_destroy(face);
    cairo_destroy(context);
    cairo_surface_finish(surface);
    const bool written = cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS;
    cairo_surface_destroy(surface);
    return drawn && written;  // the font is freed with the process
}

bool write_line(const std::string& path)
{
    lxw_workbook* const book = workbook_new(path.c_str());
    worksheet_write_string(workbook_add_worksheet(book, nullptr), 0, 0, "One line of text", nullptr);
    return workbook_close(book) == LXW_NO_ERROR;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) return 2;
    const std::string folder = argv[1];
    return draw_line(folder + "/line.pdf") && write_line(folder + "/line.xlsx") ? 0 : 1;
}
