// Generated from schemas/ by `npm run generate`. Do not edit.
export interface Validator {
  (data: unknown): boolean;
  errors?: { instancePath: string; message?: string }[] | null;
}
export declare const validators: {
  readonly 'library': Validator;
  readonly 'site': Validator;
  readonly 'document': Validator;
  readonly 'device': Validator;
  readonly 'response': Validator;
  readonly 'question': Validator;
  readonly 'washer': Validator;
  readonly 'ultrasonic': Validator;
  readonly 'sterilizer': Validator;
  readonly 'chemistry': Validator;
  readonly 'water': Validator;
  readonly 'packaging': Validator;
  readonly 'monitor': Validator;
  readonly 'set': Validator;
  readonly 'procedure': Validator;
  readonly 'poster': Validator;
  readonly 'training': Validator;
  readonly 'quiz': Validator;
  readonly 'waiver': Validator;
  readonly 'sign-off': Validator;
};
