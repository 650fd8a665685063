// Generated from schemas/ by `npm run generate`. Do not edit.
export interface Validator {
  (data: unknown): boolean;
  errors?: { instancePath: string; message?: string }[] | null;
}
export declare const validate_library: Validator;
export declare const validate_site: Validator;
export declare const validate_document: Validator;
export declare const validate_device: Validator;
export declare const validate_response: Validator;
export declare const validate_question: Validator;
export declare const validate_washer: Validator;
export declare const validate_ultrasonic: Validator;
export declare const validate_sterilizer: Validator;
export declare const validate_chemistry: Validator;
export declare const validate_water: Validator;
export declare const validate_packaging: Validator;
export declare const validate_monitor: Validator;
export declare const validate_set: Validator;
export declare const validate_procedure: Validator;
export declare const validate_poster: Validator;
export declare const validate_training: Validator;
export declare const validate_quiz: Validator;
export declare const validate_waiver: Validator;
export declare const validate_sign_off: Validator;
